using PatternPress.Quilting.Geometry;

namespace PatternPress.Quilting.Resolving;

/// <summary>A sashing strip or cornerstone in its place.</summary>
/// <param name="Place">Finished, in the coordinates of its frame, before anything is trimmed off.</param>
public sealed record Sash(SashKind Kind, int Row, int Column, Rect Place, string Fabric)
{
    /// <summary>How it lies on the quilt: upright, where its place is in quilt coordinates, or on point.</summary>
    public Frame Frame { get; init; }

    /// <summary>What is left of it, in the coordinates of its frame, where the edge of the quilt's middle cuts it; else null.
    /// </summary>
    public Polygon? Trimmed { get; init; }

    /// <summary>Its edge in quilt coordinates.</summary>
    public Polygon Outline => Frame.ToQuilt(Trimmed ?? Place.ToPolygon());

    public Sash MovedBy(Point by) =>
        Frame.OnPoint
            ? this with
            {
                Frame = Frame.MovedBy(by),
            }
            : this with
            {
                Place = Place.MoveBy(by),
            };
}

public enum SashKind
{
    /// <summary>A strip beside a block, as long as the block is high: between the blocks of a row.</summary>
    Upright,

    /// <summary>A strip above or below one block (with cornerstones).</summary>
    Level,

    /// <summary>A strip across the whole row (without cornerstones).</summary>
    Row,

    Cornerstone,

    /// <summary>A strip along a whole column.</summary>
    Column,
}
