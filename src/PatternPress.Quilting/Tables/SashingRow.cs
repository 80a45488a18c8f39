using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Tables;

/// <summary>Sashing strips of one kind and fabric.</summary>
/// <param name="Number">Tells different lengths of one kind and fabric apart.</param>
public sealed record SashingRow(
    SashKind Kind,
    string Fabric,
    int Number,
    ImmutableArray<SashingCell?> BySize
);

/// <param name="Cut">Id of the piece, or of the strips it is cut from when joined.</param>
/// <param name="Count">Strips in the quilt.</param>
/// <param name="FinishedWidth">Across.</param>
/// <param name="FinishedHeight">Down.</param>
/// <param name="CutWidth">Across, as cut.</param>
/// <param name="CutHeight">Down, as cut.</param>
/// <param name="Joined">How strips are joined to reach the length; null for pieces cut whole.</param>
public sealed record SashingCell(
    string Cut,
    long Count,
    Length FinishedWidth,
    Length FinishedHeight,
    Length CutWidth,
    Length CutHeight,
    JoinedRow? Joined
);
