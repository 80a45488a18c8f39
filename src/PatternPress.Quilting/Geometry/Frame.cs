using System.Collections.Immutable;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Geometry;

/// <summary>
/// Coordinates that lie on a quilt upright or turned by an eighth: blocks set on point keep rational coordinates of their
/// own, and √2 comes in only where these are laid on the quilt.
/// </summary>
/// <param name="Origin">Where the frame's origin lies in the quilt.</param>
/// <param name="OnPoint">Whether the frame is turned an eighth counter-clockwise: its X runs to the upper right, its Y to the
/// lower right, and a block's upper right corner points up.</param>
public readonly record struct Frame(Point Origin, bool OnPoint)
{
    private static readonly Exact _halfOfRootTwo = new(0, new Rational(1, 2));

    /// <summary>The quilt's own coordinates.</summary>
    public static Frame Upright => default;

    /// <summary>Where a point of the frame lies in the quilt.</summary>
    public Point ToQuilt(Point point) =>
        OnPoint
            ? Origin
                + new Point(
                    (point.X + point.Y) * _halfOfRootTwo,
                    (point.Y - point.X) * _halfOfRootTwo
                )
            : Origin + point;

    public Polygon ToQuilt(Polygon shape)
    {
        if (this == Upright)
        {
            return shape;
        }
        var corners = ImmutableArray.CreateBuilder<Point>(shape.Corners.Length);
        foreach (Point corner in shape.Corners)
        {
            corners.Add(ToQuilt(corner));
        }
        Frame frame = this;
        return new Polygon(corners.MoveToImmutable())
        {
            Arcs = shape.Arcs.IsEmpty
                ? shape.Arcs
                : [.. shape.Arcs.Select(arc => arc with { Center = frame.ToQuilt(arc.Center) })],
        };
    }

    public Frame MovedBy(Point by) => this with { Origin = Origin + by };
}
