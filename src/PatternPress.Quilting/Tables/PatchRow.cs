using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Tables;

/// <summary>Pieces of a one-patch quilt of one kind and fabric.</summary>
/// <param name="Reversed">Ends that are the others turned over.</param>
public sealed record PatchRow(
    SettingPieceKind Kind,
    bool Reversed,
    string Fabric,
    ImmutableArray<PatchCell?> BySize
);

/// <param name="Cut">Id of the strips or rectangles they are cut from.</param>
/// <param name="Count">Pieces in the quilt.</param>
/// <param name="From">Strips or rectangles.</param>
/// <param name="PerStrip">Pieces from each.</param>
/// <param name="Height">Cut height of the strip or rectangle.</param>
/// <param name="Finished">Height of the row, finished.</param>
public sealed record PatchCell(
    string Cut,
    long Count,
    long From,
    long PerStrip,
    Length Height,
    Length Finished
);
