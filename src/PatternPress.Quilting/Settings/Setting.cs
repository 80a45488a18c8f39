using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Settings;

/// <summary>A way of setting blocks together: where each block, sash and cornerstone lies in the field.</summary>
public abstract class Setting
{
    /// <summary>The word the source uses: "straight".</summary>
    public abstract string Keyword { get; }

    /// <summary>Lays the field out, its upper left corner at the origin.</summary>
    /// <param name="design">Sashing and the like.</param>
    /// <param name="blocks">The block of each place and how it is turned.</param>
    public abstract Field Lay(QuiltDesign design, (ColoredBlock Block, Turn Turn)[,] blocks);
}

/// <summary>The field of blocks inside all borders.</summary>
public sealed record Field(
    Length Width,
    Length Height,
    ImmutableArray<BlockPlace> Places,
    ImmutableArray<Sash> Sashes
);
