using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Tables;

/// <summary>One border.</summary>
/// <param name="Number">From 1 at the inside.</param>
public sealed record BorderRow(int Number, ImmutableArray<BorderCell?> BySize);

/// <param name="Name">The designer's name for it; may be null.</param>
/// <param name="Corners">Which strips are sewn first, or what is in the corners.</param>
/// <param name="Widths">Finished, of the border on its four sides.</param>
/// <param name="InsideWidth">Finished width of what it goes round.</param>
/// <param name="InsideHeight">Finished height of what it goes round.</param>
/// <param name="OutsideWidth">Finished width with the border on.</param>
/// <param name="OutsideHeight">Finished height with the border on.</param>
/// <param name="Parts">Strips and corner squares, in the order they are sewn.</param>
/// <param name="Joined">How strips are joined, where a part is longer than the fabric is wide.</param>
public sealed record BorderCell(
    string? Name,
    BorderCorners Corners,
    BorderWidths Widths,
    Length InsideWidth,
    Length InsideHeight,
    Length OutsideWidth,
    Length OutsideHeight,
    ImmutableArray<BorderPartRow> Parts,
    ImmutableArray<JoinedRow> Joined
)
{
    /// <summary>Rows of blocks and corner blocks, in the order they are sewn.</summary>
    public ImmutableArray<BorderBlocksRow> Rows { get; init; } = [];

    /// <summary>Whether it is a strip that makes the blocks of the next border come out.</summary>
    public bool IsCoping { get; init; }
}

/// <summary>The strips of one border that are alike.</summary>
/// <param name="Part">Sides, top and bottom, or corner squares.</param>
/// <param name="Cut">Id of the pieces, or of the strips they are cut from when joined.</param>
/// <param name="Width">Cut width of the strip.</param>
/// <param name="Length">Cut length of the strip.</param>
public sealed record BorderPartRow(
    BorderPart Part,
    string Fabric,
    string Cut,
    int Count,
    Length Width,
    Length Length,
    bool Joined
);

/// <summary>The rows of blocks of one border that are alike, or its corner blocks.</summary>
/// <param name="Part">Sides, top and bottom, or corners.</param>
/// <param name="Count">How many such rows there are; of corners how many blocks.</param>
/// <param name="Blocks">From the left end of the row, seen with its outer edge up; of corners the block that is in all four, as
/// it lies in the upper left one.</param>
/// <param name="Width">Width of the row as sewn, seams at both edges included.</param>
/// <param name="Length">Length of the row as sewn, seams at both ends included.</param>
public sealed record BorderBlocksRow(
    BorderPart Part,
    int Count,
    ImmutableArray<PlacementCell> Blocks,
    Length Width,
    Length Length
);
