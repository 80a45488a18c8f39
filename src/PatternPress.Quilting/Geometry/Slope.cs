using System.Collections.Immutable;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Geometry;

/// <summary>
/// A half plane with an upright, level or 45° edge: all points with <paramref name="X"/>·x + <paramref name="Y"/>·y ≥
/// <paramref name="Least"/>.
/// </summary>
/// <param name="X">−1, 0 or 1.</param>
/// <param name="Y">−1, 0 or 1.</param>
public readonly record struct Slope(int X, int Y, Length Least)
{
    /// <summary>How far a point lies inside, in units of the edge's own measure; negative outside.</summary>
    public Length Depth(Point point) => (point.X * X) + (point.Y * Y) - Least;

    /// <summary>
    /// The part of a convex shape in this half plane, exactly; null where none is left. The shape's edges must be upright,
    /// level or at 45°, so that no edge is cut but at a point that the same numbers can name.
    /// </summary>
    public Polygon? Keep(Polygon shape)
    {
        ImmutableArray<Point> corners = shape.Corners;
        var kept = ImmutableArray.CreateBuilder<Point>(corners.Length + 1);
        bool cut = false;
        Point last = corners[^1];
        Length lastDepth = Depth(last);
        foreach (Point corner in corners)
        {
            Length depth = Depth(corner);
            if (lastDepth.Sign * depth.Sign < 0)
            {
                kept.Add(Crossing(last, lastDepth, corner));
            }
            cut |= depth.Sign < 0;
            if (depth.Sign >= 0)
            {
                kept.Add(corner);
            }
            (last, lastDepth) = (corner, depth);
        }
        return !cut ? shape
            : kept.Count < 3 ? null
            : new Polygon(kept.ToImmutable());
    }

    // Along an upright, level or 45° edge the depth grows by a whole number for each unit of the way.
    private Point Crossing(Point from, Length depth, Point to)
    {
        int x = (to.X - from.X).Sign,
            y = (to.Y - from.Y).Sign;
        Length way = -depth / new Rational((X * x) + (Y * y));
        return new Point(from.X + (way * x), from.Y + (way * y));
    }
}
