using System.Collections.Immutable;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Geometry;

/// <summary>All points on the left hand of one going from one point to another (Y down), the line included; both have rational
/// coordinates.</summary>
public readonly record struct HalfPlane(Point From, Point To)
{
    public HalfPlane Reversed => new(To, From);

    /// <summary>1 inside, 0 on the line, −1 outside.</summary>
    public int SideOf(Point point) => Depth(point).Sign;

    /// <summary>The part of a convex polygon inside, exactly; null where none is left.</summary>
    public Polygon? Keep(Polygon shape)
    {
        var kept = ImmutableArray.CreateBuilder<Point>(shape.Corners.Length + 1);
        Point last = shape.Corners[^1];
        Exact lastDepth = Depth(last);
        foreach (Point corner in shape.Corners)
        {
            Exact depth = Depth(corner);
            if (lastDepth.Sign * depth.Sign < 0)
            {
                Rational share = lastDepth.One / (lastDepth.One - depth.One);
                kept.Add(
                    new Point(
                        last.X + ((corner.X - last.X) * share),
                        last.Y + ((corner.Y - last.Y) * share)
                    )
                );
            }
            if (depth.Sign >= 0)
            {
                kept.Add(corner);
            }
            (last, lastDepth) = (corner, depth);
        }
        if (kept.Count < 3)
        {
            return null;
        }
        var polygon = new Polygon(kept.ToImmutable());
        return polygon.Area.Sign > 0 ? polygon : null;
    }

    private Exact Depth(Point point)
    {
        Point way = To - From,
            to = point - From;
        return (way.Y.Inches * to.X.Inches) - (way.X.Inches * to.Y.Inches);
    }
}
