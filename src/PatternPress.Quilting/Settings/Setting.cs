using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Settings.Fills;

namespace PatternPress.Quilting.Settings;

/// <summary>A way of setting blocks together: where each block, sash and cornerstone lies in the field, and in which rows
/// they are sewn.</summary>
public abstract class Setting
{
    /// <summary>The word the source uses: "straight".</summary>
    public abstract string Keyword { get; }

    /// <summary>Whether the blocks stand on a corner, so that places lie in between the rows and columns too and triangles fill
    /// the edge.</summary>
    public virtual bool StandsOnPoint => false;

    /// <summary>The places to fill in a size.</summary>
    public virtual FillGrid Places(int rows, int columns) => new(rows, columns, StandsOnPoint);

    /// <summary>Lays the field out, its upper left corner at the origin.</summary>
    /// <param name="design">Sashing and the like.</param>
    /// <param name="blocks">The block of each place and how it is turned, line by line.</param>
    public abstract Field Lay(QuiltDesign design, (ColoredBlock Block, Turn Turn)[][] blocks);
}

/// <summary>The field of blocks inside all borders.</summary>
/// <param name="Pieces">Triangles along the edge.</param>
/// <param name="Rows">In the order of sewing.</param>
public sealed record Field(
    Length Width,
    Length Height,
    ImmutableArray<BlockPlace> Places,
    ImmutableArray<Sash> Sashes,
    ImmutableArray<SettingPiece> Pieces,
    ImmutableArray<LayoutRow> Rows
);
