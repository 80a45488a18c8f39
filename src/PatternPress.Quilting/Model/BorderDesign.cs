using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Source;

namespace PatternPress.Quilting.Model;

/// <summary>One border, from the inside out: strips of one fabric, or blocks in a row along each side.</summary>
/// <param name="Widths">Finished; null for a border as wide as its blocks are high.</param>
/// <param name="Fabric">Of its strips; null for a border of blocks.</param>
/// <param name="CornerFabric">Of its corner squares.</param>
public sealed record BorderDesign(
    BorderWidths? Widths,
    Sourced<string>? Fabric,
    BorderCorners Corners,
    Sourced<string>? CornerFabric,
    string? Name,
    Span Span
)
{
    /// <summary>The blocks of a pieced border; null for strips.</summary>
    public BorderBlocks? Blocks { get; init; }

    /// <summary>The block in each corner, drawn as it lies in the upper left one and turned a quarter from corner to corner.
    /// </summary>
    public FillCell? CornerBlock { get; init; }

    /// <summary>A strip inside a border of blocks, as wide as makes the blocks come out; null for none.</summary>
    public CopingDesign? Coping { get; init; }

    /// <summary>The numbers it takes when borders are counted: a coping strip is a border of its own.</summary>
    public int Numbers => Coping is null ? 1 : 2;
}

/// <summary>Finished widths of a border on its four sides; zero where it has none.</summary>
public readonly record struct BorderWidths(Length Left, Length Top, Length Right, Length Bottom)
{
    /// <summary>Whether strips at the sides meet strips at top or bottom.</summary>
    public bool MeetInCorners =>
        (Left.Sign > 0 || Right.Sign > 0) && (Top.Sign > 0 || Bottom.Sign > 0);

    public BorderWidths(Length all)
        : this(all, all, all, all) { }

    /// <param name="sides">Left and right.</param>
    /// <param name="ends">Top and bottom.</param>
    public BorderWidths(Length sides, Length ends)
        : this(sides, ends, sides, ends) { }

    /// <summary>The width where all sides are alike; else null.</summary>
    public Length? Even => Left == Right && Top == Bottom && Left == Top ? Left : null;

    /// <summary>The widths of the sides it has, each once, in the order left, right, top, bottom.</summary>
    public IEnumerable<Length> Different()
    {
        var met = new List<Length>(4);
        foreach (Length width in (Length[])[Left, Right, Top, Bottom])
        {
            if (width.Sign > 0 && !met.Contains(width))
            {
                met.Add(width);
            }
        }
        return met;
    }
}

/// <summary>What stands along each side of a pieced border, drawn as it lies along the top and turned with the sides.
/// </summary>
/// <param name="Repeat">Repeats from the left.</param>
/// <param name="Middle">Once, in the middle of each side; null for none.</param>
/// <param name="Second">Repeats from the middle on; null where nothing changes there.</param>
public sealed record BorderBlocks(
    ImmutableArray<FillCell> Repeat,
    FillCell? Middle,
    ImmutableArray<FillCell>? Second,
    Span Span
)
{
    /// <summary>Whether the two halves of a side must be alike in length.</summary>
    public bool HasMiddle => Middle is not null || Second is not null;

    /// <summary>What repeats from the middle on: without a word about it what was before, backwards.</summary>
    public ImmutableArray<FillCell> AfterMiddle => Second ?? [.. Repeat.Reverse()];

    public IEnumerable<FillCell> Cells() =>
        Middle is { } middle
            ? Repeat.Append(middle).Concat(Second ?? [])
            : Repeat.Concat(Second ?? []);
}

/// <summary>A coping strip: its width is computed.</summary>
/// <param name="Least">The narrowest it may be, finished; null for the house's.</param>
/// <param name="Most">The widest it may be, finished; null for the house's.</param>
public sealed record CopingDesign(
    Sourced<string> Fabric,
    Length? Least,
    Length? Most,
    string? Name,
    Span Span
);

/// <summary>How a border turns its corners.</summary>
public enum BorderCorners
{
    /// <summary>Side strips are sewn first; top and bottom run the full width.</summary>
    SidesFirst,

    /// <summary>Top and bottom strips are sewn first; the sides run the full height.</summary>
    TopFirst,

    /// <summary>A square of another fabric in each corner.</summary>
    Squares,

    /// <summary>The strips meet in a seam at 45° from the inner to the outer corner.</summary>
    Mitered,

    /// <summary>A block in each corner.</summary>
    Blocks,
}
