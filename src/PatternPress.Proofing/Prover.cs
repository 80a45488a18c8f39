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
    /// Stops at the first step that cannot be done as printed and says why; if all can be done, what is only in excess;
    /// null if there is nothing.
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
            found = ProveSize(index, i, stop: true).Mistakes;
        }
    }

    // What is used is known when all that is sewn has been looked at, so cutting and buying come after.
    private static readonly ImmutableArray<Action<Workbench>> Steps =
    [
        CountStep.Do,
        UnitStep.Do,
        FoundationStep.Do,
        AppliqueStep.Do,
        BlockStep.Do,
        LayoutStep.Do,
        TemplateStep.Do,
        BorderStep.Do,
        BindingStep.Do,
        CutStep.Do,
        BuyStep.Do,
        SubstituteStep.Do,
        ScrapStep.Do,
        BackingStep.Do,
        TotalStep.Do,
        BattingStep.Do,
    ];

    private SizeProof ProveSize(TableIndex index, int size, bool stop = false)
    {
        var bench = new Workbench(index, size, _drawing[size]);
        foreach (Action<Workbench> step in Steps)
        {
            step(bench);
            if (stop && bench.Notes.Refuted)
            {
                break;
            }
        }
        return bench.Result();
    }
}
