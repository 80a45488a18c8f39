using System.Collections.Immutable;
using PatternPress.Proofing.Shapes;
using PatternPress.Proofing.Ways;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing;

/// <summary>One size while it is made: the tables on the one side, what has been counted and sewn on the other.</summary>
internal sealed class Workbench
{
    private readonly Dictionary<string, long> _used = [];
    private readonly List<Remainder> _remainders = [];

    public Workbench(TableIndex index, int size, DrawnQuilt drawn)
    {
        Index = index;
        Size = size;
        Drawn = drawn;
        Column = index.Tables.Sizes[size];
        Notes = new Notes(Column.Key, index.Tables.Unit);
    }

    public TableIndex Index { get; }

    public PrintedTables Tables => Index.Tables;

    /// <summary>The column of the tables.</summary>
    public int Size { get; }

    public SizeColumn Column { get; }

    public DrawnQuilt Drawn { get; }

    /// <summary>What the house promises: its ruler, its allowances, the cuts its shops make.</summary>
    public House House => Drawn.Quilt.House;

    public Length Seam => Column.Seam;

    public Notes Notes { get; }

    /// <summary>Blocks that the placement chart asks for.</summary>
    public Dictionary<(string Coloring, int Number), long> BlocksPlaced { get; } = [];

    /// <summary>Units that the blocks take, by label.</summary>
    public Dictionary<string, long> UnitsTaken { get; } = [];

    /// <summary>Units that could be sewn, by label.</summary>
    public Dictionary<string, SewnUnit> Units { get; } = [];

    /// <summary>Blocks that could be sewn.</summary>
    public Dictionary<(string Coloring, int Number), SewnBlock> Blocks { get; } = [];

    /// <summary>Shapes of the templates that pieces are cut around, by the piece; null where the way of making it knows none.</summary>
    public Dictionary<string, NeededTemplate?> TemplatesNeeded { get; } = [];

    /// <summary>How many pieces a strip or rectangle is cut into around a template, where that is not its own number.</summary>
    public Dictionary<string, long> TemplatePieces { get; } = [];

    /// <summary>The field inside all borders as sewn; null where it could not be.</summary>
    public (Length Width, Length Height)? Field { get; set; }

    /// <summary>Pieces that are sewn into something, by id.</summary>
    public IReadOnlyDictionary<string, long> Used => _used;

    public void Use(string cut, long count) => _used[cut] = _used.GetValueOrDefault(cut) + count;

    public void Leave(string what, long count)
    {
        if (count > 0)
        {
            _remainders.Add(new Remainder(what, count, Length.Zero));
        }
    }

    public void Leave(string what, Length length)
    {
        if (length.Sign > 0)
        {
            _remainders.Add(new Remainder(what, 0, length));
        }
    }

    /// <summary>
    /// A piece sewn with a seam on both sides must show what is asked for: it is cut to the first mark of the ruler that
    /// is not less.
    /// </summary>
    public bool Fits(Length cut, Length finished) =>
        Notes.Ok(cut == House.Ruler.Up(finished + (Seam * 2)));

    /// <summary>The cell of the cutting table that a row takes its pieces from; a mistake if there is none.</summary>
    public CutCell? Take(ProofStep step, string table, string row, string id, string fabric)
    {
        if (!Notes.Ok(Index.Cuts.TryGetValue(id, out (CuttingTable Table, CutRow Row) cut)))
        {
            Notes.Wrong(step, table, row, "pieces", id, "no cutting table has a row of that name");
            return null;
        }
        Notes.Same(step, table, row, "fabric", fabric, cut.Table.Fabric, $"{id} is cut from");
        if (!Notes.Ok(cut.Row.BySize[Size] is not null))
        {
            Notes.Wrong(step, table, row, "pieces", id, $"{id} is not cut in this size");
            return null;
        }
        return cut.Row.BySize[Size];
    }

    public SizeProof Result() => new(Column.Key, Notes.Checked, Notes.Mistakes, [.. _remainders]);
}
