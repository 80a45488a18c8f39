using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Settings.Fills;

namespace PatternPress.Quilting.Settings;

/// <summary>A way of setting blocks together: where each block, sash and cornerstone lies in the field, and in which rows
/// or sections they are sewn.</summary>
public abstract class Setting
{
    /// <summary>The word the source uses: "straight".</summary>
    public abstract string Keyword { get; }

    /// <summary>Whether the blocks stand on a corner, so that places lie in between the rows and columns too and triangles fill
    /// the edge.</summary>
    public virtual bool StandsOnPoint => false;

    /// <summary>Whether columns and rows have widths of their own, so that blocks may be of several sizes and one without a
    /// size takes that of its place.</summary>
    public virtual bool HasGrid => false;

    /// <summary>Whether blocks are placed one by one instead of by a fill.</summary>
    public virtual bool IsFree => false;

    /// <summary>Whether strips of sashing have a place.</summary>
    public virtual bool TakesSashing => true;

    /// <summary>Whether every strip of sashing runs from edge to edge, so that none meet and there are no cornerstones.</summary>
    public virtual bool HasOnlyLongStrips => false;

    /// <summary>Whether every other line is shifted by half a block and ends in half blocks.</summary>
    public virtual bool IsStaggered => false;

    /// <summary>Whether its places hold blocks; else single patches.</summary>
    public virtual bool HasBlocks => true;

    /// <summary>The places to fill in a size.</summary>
    public virtual FillGrid Places(SizeDesign size) => new(size.Rows, size.Columns, StandsOnPoint);

    /// <summary>Lays the field out, its upper left corner at the origin; null where something was reported.</summary>
    public abstract Field? Lay(Layout layout);
}

/// <summary>The field of blocks inside all borders.</summary>
/// <param name="Pieces">Triangles along the edge.</param>
/// <param name="Rows">In the order of sewing; none where it is sewn in sections.</param>
public sealed record Field(
    Length Width,
    Length Height,
    ImmutableArray<BlockPlace> Places,
    ImmutableArray<Sash> Sashes,
    ImmutableArray<SettingPiece> Pieces,
    ImmutableArray<LayoutRow> Rows
)
{
    /// <summary>How the places, and behind them the sashes, are sewn together in sections, by their index; null where the field is sewn in rows.</summary>
    public SewingOrder? Order { get; init; }
}
