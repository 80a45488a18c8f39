using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Tables;

/// <summary>Setting triangles of one kind and fabric.</summary>
/// <param name="Number">Tells different sizes of one kind and fabric apart.</param>
public sealed record TriangleRow(
    SettingPieceKind Kind,
    string Fabric,
    int Number,
    ImmutableArray<TriangleCell?> BySize
);

/// <param name="Cut">Id of the squares.</param>
/// <param name="Count">Triangles in the quilt.</param>
/// <param name="Squares">To cut.</param>
/// <param name="Square">Cut side of a square.</param>
/// <param name="Edge">Finished: the long edge of a side triangle, a short edge of a corner triangle.</param>
public sealed record TriangleCell(string Cut, long Count, long Squares, Length Square, Length Edge);
