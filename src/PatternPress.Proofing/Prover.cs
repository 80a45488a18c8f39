using System.Collections.Immutable;
using PatternPress.Proofing.Shapes;
using PatternPress.Proofing.Steps;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing;

/// <summary>Proves tables against one drawing, which is prepared once.</summary>
/// <param name="drawing">Every size, in the order of the tables.</param>
public sealed class Prover(ImmutableArray<Quilt> drawing)
{
    private readonly ImmutableArray<DrawnQuilt> _drawing =
    [
        .. drawing.Select(quilt => new DrawnQuilt(quilt)),
    ];

    public ProofReport Prove(PrintedTables tables)
    {
        var notes = new Notes(null, tables.Unit);
        if (ReadStep.Read(tables, _drawing, notes) is not { } index)
        {
            return new ProofReport(tables.Pattern, notes.Mistakes, [], notes.Checked);
        }
        var sizes = ImmutableArray.CreateBuilder<SizeProof>(_drawing.Length);
        for (int i = 0; i < _drawing.Length; i++)
        {
            sizes.Add(ProveSize(index, i));
        }
        return new ProofReport(
            tables.Pattern,
            notes.Mistakes,
            sizes.MoveToImmutable(),
            notes.Checked
        );
    }

    /// <summary>
    /// Stops at the first size with a mistake. Of what it finds there, what stands against making the quilt goes before
    /// what is only in excess; null if there is nothing.
    /// </summary>
    public Mistake? FirstMistake(PrintedTables tables)
    {
        var notes = new Notes(null, tables.Unit);
        TableIndex? index = ReadStep.Read(tables, _drawing, notes);
        Mistake? excess = null;
        ImmutableArray<Mistake> found = notes.Mistakes;
        for (int i = 0; ; i++)
        {
            foreach (Mistake mistake in found)
            {
                if (mistake.Kind != MistakeKind.Excess)
                {
                    return mistake;
                }
                excess ??= mistake;
            }
            if (index is null || i >= _drawing.Length)
            {
                return excess;
            }
            found = ProveSize(index, i).Mistakes;
        }
    }

    private SizeProof ProveSize(TableIndex index, int size)
    {
        var bench = new Workbench(index, size, _drawing[size]);
        CountStep.Do(bench);
        UnitStep.Do(bench);
        BlockStep.Do(bench);
        LayoutStep.Do(bench);
        BorderStep.Do(bench);
        BindingStep.Do(bench);
        // What is used is known when all that is sewn has been looked at.
        CutStep.Do(bench);
        BuyStep.Do(bench);
        BackingStep.Do(bench);
        BattingStep.Do(bench);
        return bench.Result();
    }
}
