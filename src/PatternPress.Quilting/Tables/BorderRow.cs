using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Tables;

/// <summary>One border.</summary>
/// <param name="Number">From 1 at the inside.</param>
public sealed record BorderRow(int Number, ImmutableArray<BorderCell?> BySize);

/// <param name="Name">The designer's name for it; may be null.</param>
/// <param name="Corners">Which strips are sewn first, or corner squares.</param>
/// <param name="FinishedWidth">Of the border.</param>
/// <param name="InsideWidth">Finished width of what it goes round.</param>
/// <param name="InsideHeight">Finished height of what it goes round.</param>
/// <param name="OutsideWidth">Finished width with the border on.</param>
/// <param name="OutsideHeight">Finished height with the border on.</param>
/// <param name="Parts">In the order they are sewn.</param>
/// <param name="Joined">How strips are joined, where a part is longer than the fabric is wide.</param>
public sealed record BorderCell(
    string? Name,
    BorderCorners Corners,
    Length FinishedWidth,
    Length InsideWidth,
    Length InsideHeight,
    Length OutsideWidth,
    Length OutsideHeight,
    ImmutableArray<BorderPartRow> Parts,
    ImmutableArray<JoinedRow> Joined
);

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
