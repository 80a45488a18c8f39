using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Techniques.Sketching;

/// <summary>
/// A level, upright or 45° line: the points with A·x + B·y = C, where A and B are −1, 0 or 1. Such lines meet in
/// points that need no division by a root. As the edge of a clockwise polygon, (A, B) points outward.
/// </summary>
internal readonly record struct SlantLine(int A, int B, Length C)
{
    /// <summary>The line through two points, which lie level, upright or at 45°.</summary>
    public static SlantLine Through(Point from, Point to)
    {
        Point way = to - from;
        if (way.X.Sign != 0 && way.Y.Sign != 0 && way.X.Inches.Abs() != way.Y.Inches.Abs())
        {
            throw new ArgumentException($"{from} to {to} is neither level, upright nor at 45°.");
        }
        int a = way.Y.Sign,
            b = -way.X.Sign;
        return new SlantLine(a, b, (from.X * a) + (from.Y * b));
    }

    public static SlantLine Upright(Length x) => new(1, 0, x);

    public static SlantLine Level(Length y) => new(0, 1, y);

    /// <summary>The distance from the line to a parallel one of A·x + B·y = C + 1 is 1, or 1/√2 at 45°.</summary>
    public SlantLine MovedOut(Length by) =>
        this with
        {
            C = C + (A != 0 && B != 0 ? Allowance.Diagonal(by) : by),
        };

    public SlantLine Reversed => new(-A, -B, -C);

    /// <summary>1 outside (towards (A, B)), 0 on the line, −1 inside.</summary>
    public int SideOf(Point point) => ((point.X * A) + (point.Y * B) - C).Sign;

    /// <summary>Where two lines that are not parallel cross.</summary>
    public Point Meet(SlantLine other)
    {
        long turn = (A * other.B) - (other.A * B);
        return new Point(
            ((C * other.B) - (other.C * B)) / turn,
            ((other.C * A) - (C * other.A)) / turn
        );
    }

    /// <summary>The mirror image of a point.</summary>
    public Point Mirror(Point point)
    {
        Length beyond = (point.X * A) + (point.Y * B) - C;
        int times = A != 0 && B != 0 ? 1 : 2;
        return new Point(point.X - (beyond * (A * times)), point.Y - (beyond * (B * times)));
    }

    /// <summary>A polygon turned over along the line, clockwise again.</summary>
    public Polygon Mirror(Polygon polygon)
    {
        SlantLine line = this;
        int count = polygon.Corners.Length;
        return new Polygon([.. polygon.Corners.Reverse().Select(line.Mirror)])
        {
            Arcs =
            [
                .. polygon
                    .Arcs.Reverse()
                    .Select(arc => new QuarterArc(
                        ((2 * count) - 2 - arc.Edge) % count,
                        line.Mirror(arc.Center)
                    ))
                    .OrderBy(arc => arc.Edge),
            ],
        };
    }
}
