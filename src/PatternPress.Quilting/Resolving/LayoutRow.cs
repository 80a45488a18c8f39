using System.Collections.Immutable;

namespace PatternPress.Quilting.Resolving;

/// <summary>Pieces of a layout that are sewn to a row before the rows are sewn together, in the order of sewing.</summary>
/// <param name="Kind">What the row is.</param>
/// <param name="Number">Of block rows, from 0; −1 for other rows.</param>
/// <param name="Parts">From its first end to its last.</param>
public sealed record LayoutRow(LayoutRowKind Kind, int Number, ImmutableArray<LayoutPart> Parts);

public enum LayoutRowKind
{
    /// <summary>Blocks, with the strips between them and the triangles at its ends.</summary>
    Blocks,

    /// <summary>Sashing between two rows of blocks.</summary>
    Sashing,

    /// <summary>A single piece that is sewn on when all rows are together: a corner triangle.</summary>
    Corner,
}

/// <summary>A block, strip or triangle by its index in the quilt.</summary>
public readonly record struct LayoutPart(LayoutPartKind Kind, int Index);

public enum LayoutPartKind
{
    Block,
    Sash,
    SettingPiece,
}
