using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Resolving;

/// <summary>
/// One size of a pattern, every patch placed in exact finished coordinates (origin: upper left corner of the whole
/// quilt, borders included).
/// </summary>
/// <param name="Width">Finished, to the outer edge of the last border.</param>
/// <param name="Center">The field of blocks and sashing inside all borders.</param>
/// <param name="Places">Every block, row by row; on point line by line.</param>
/// <param name="Sashes">Sashing strips and cornerstones.</param>
/// <param name="Borders">From the inside out.</param>
public sealed record Quilt(
    Pattern Pattern,
    SizeDesign Size,
    Length Width,
    Length Height,
    Rect Center,
    ImmutableArray<BlockPlace> Places,
    ImmutableArray<Sash> Sashes,
    ImmutableArray<Border> Borders
)
{
    public House House => Size.House;

    /// <summary>Triangles along the edge of the field.</summary>
    public ImmutableArray<SettingPiece> Pieces { get; init; } = [];

    /// <summary>The rows that the field is sewn in, in the order of sewing.</summary>
    public ImmutableArray<LayoutRow> Rows { get; init; } = [];

    /// <summary>How its pieces are sewn together in sections, by their index; null where it is sewn in rows.</summary>
    public SewingOrder? Order { get; init; }

    /// <summary>The pieces of <see cref="Order"/>: the places, and behind them the sashes.</summary>
    public LayoutPart PieceAt(int index) =>
        index < Places.Length
            ? new(LayoutPartKind.Block, index)
            : new(LayoutPartKind.Sash, index - Places.Length);

    /// <summary>Where a block or strip lies, in the coordinates of its frame.</summary>
    public Rect PlaceOf(LayoutPart piece) =>
        piece.Kind == LayoutPartKind.Block ? Places[piece.Index].Place : Sashes[piece.Index].Place;

    /// <summary>Lines of places from the top; on point one of no places may lie in between each two.</summary>
    public int Lines => OnPoint ? (2 * Size.Rows) - 1 : Size.Rows;

    /// <summary>Whether its blocks stand on a corner.</summary>
    public bool OnPoint => !Places.IsEmpty && Places[0].Frame.OnPoint;

    /// <summary>Every block: those of the field, then those of the borders from the inside out.</summary>
    public IEnumerable<BlockPlace> AllBlocks()
    {
        foreach (BlockPlace place in Places)
        {
            yield return place;
        }
        foreach (Border border in Borders)
        {
            foreach (BorderBlock block in border.Blocks)
            {
                yield return block.Place;
            }
        }
    }

    /// <summary>Every different colored block with the number of times it is used, in order of coloring.</summary>
    public IEnumerable<(ColoredBlock Block, int Count)> BlockCounts()
    {
        var counts = new Dictionary<ColoredBlock, (int Met, int Count)>();
        foreach (BlockPlace place in AllBlocks())
        {
            (int met, int count) = counts.GetValueOrDefault(place.Block, (counts.Count, 0));
            counts[place.Block] = (met, count + 1);
        }
        var sorted = new List<KeyValuePair<ColoredBlock, (int Met, int Count)>>(counts);
        sorted.Sort(
            (a, b) =>
            {
                int order = a.Key.Coloring.Order.CompareTo(b.Key.Coloring.Order);
                order = order != 0 ? order : b.Key.Width.CompareTo(a.Key.Width);
                return order != 0 ? order : a.Value.Met.CompareTo(b.Value.Met);
            }
        );
        return sorted.ConvertAll(block => (block.Key, block.Value.Count));
    }

    /// <summary>The different blocks of a quilt; blocks of one coloring are numbered from the largest.</summary>
    public IEnumerable<(ColoredBlock Block, int Number, long Count)> NumberedBlocks()
    {
        var counts = new Dictionary<(string Key, Length Width, Length Height), long>();
        var blocks = new List<ColoredBlock>();
        foreach (BlockPlace place in AllBlocks())
        {
            var key = (place.Block.Key, place.Block.Width, place.Block.Height);
            if (!counts.TryGetValue(key, out long count))
            {
                blocks.Add(place.Block);
            }
            counts[key] = count + 1;
        }
        blocks.Sort(
            (a, b) =>
            {
                int order = a.Coloring.Order.CompareTo(b.Coloring.Order);
                order = order != 0 ? order : b.Width.CompareTo(a.Width);
                return order != 0 ? order : b.Height.CompareTo(a.Height);
            }
        );
        int number = 0;
        string? last = null;
        foreach (ColoredBlock block in blocks)
        {
            number = block.Key == last ? number + 1 : 1;
            last = block.Key;
            yield return (block, number, counts[(block.Key, block.Width, block.Height)]);
        }
    }

    /// <summary>Every patch of the quilt: blocks, sashing, triangles, borders, in that order.</summary>
    public IEnumerable<Patch> Patches()
    {
        foreach (BlockPlace place in Places)
        {
            foreach (Patch patch in place.Patches())
            {
                yield return patch;
            }
        }
        foreach (Sash sash in Sashes)
        {
            yield return new Patch(sash.Outline, sash.Fabric);
        }
        foreach (SettingPiece piece in Pieces)
        {
            yield return new Patch(piece.Shape, piece.Fabric);
        }
        foreach (Border border in Borders)
        {
            foreach (Patch patch in border.Patches())
            {
                yield return patch;
            }
        }
    }
}

/// <summary>One visible patch of fabric, finished, in quilt coordinates.</summary>
public sealed record Patch(Polygon Shape, string Fabric)
{
    /// <summary>
    /// How its print lies where pieces are cut with the print upright: turned as the unit and the block it is in.
    /// </summary>
    public Turn PrintTurn { get; init; }
}
