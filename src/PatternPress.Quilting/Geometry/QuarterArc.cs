using System.Collections.Immutable;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Geometry;

/// <summary>An edge of a shape that is a quarter of a circle rather than straight.</summary>
/// <param name="Edge">Edge i runs from corner i to corner i + 1; both corners lie on the circle.</param>
/// <param name="Center">Of the circle. Seen from it the edge's corners are a right angle apart.</param>
public readonly record struct QuarterArc(int Edge, Point Center)
{
    /// <summary>Straight pieces an arc is replaced by where straight edges are asked for: they stay within 0.04 % of the radius
    /// of the circle or, where the arc is steepest in them, 0.1 %.</summary>
    private const int Chords = 24;

    // Places on the unit circle with rational coordinates: ((1 − t²) / (1 + t²), 2t / (1 + t²)) for t = 0 to 1.
    private static readonly ImmutableArray<(Rational Cos, Rational Sin)> _places =
    [
        .. Enumerable
            .Range(1, Chords - 1)
            .Select(k =>
            {
                long n = Chords * Chords,
                    t = k * k;
                return (new Rational(n - t, n + t), new Rational(2L * Chords * k, n + t));
            }),
    ];

    /// <summary>Whether the edge bulges out of a shape that lists its corners clockwise.</summary>
    public bool IsConvex(Polygon shape)
    {
        (Point a, Point b) = Ends(shape);
        Point u = a - Center,
            v = b - Center;
        return ((u.X.Inches * v.Y.Inches) - (u.Y.Inches * v.X.Inches)).Sign > 0;
    }

    /// <summary>The square of the radius.</summary>
    public Exact RadiusSquared(Polygon shape)
    {
        Point u = Ends(shape).From - Center;
        return (u.X.Inches * u.X.Inches) + (u.Y.Inches * u.Y.Inches);
    }

    /// <summary>Places exactly on the arc between its ends, in the order of the edge; the same ones whichever way it runs.</summary>
    internal IEnumerable<Point> PlacesBetween(Polygon shape)
    {
        (Point a, Point b) = Ends(shape);
        bool convex = IsConvex(shape);
        Point start = (convex ? a : b) - Center,
            end = (convex ? b : a) - Center;
        for (int i = 0; i < _places.Length; i++)
        {
            (Rational cos, Rational sin) = _places[convex ? i : _places.Length - 1 - i];
            yield return new Point(
                Center.X + (start.X * cos) + (end.X * sin),
                Center.Y + (start.Y * cos) + (end.Y * sin)
            );
        }
    }

    /// <summary>The middle of the arc, exactly: the radius in the direction of half its ends' sum.</summary>
    public Point Middle(Polygon shape)
    {
        (Point a, Point b) = Ends(shape);
        // Half the sum of two radii at right angles is r/√2 long.
        var half = new Exact(0, new Rational(1, 2));
        return new Point(
            Center.X + ((a.X - Center.X + b.X - Center.X) * half),
            Center.Y + ((a.Y - Center.Y + b.Y - Center.Y) * half)
        );
    }

    private (Point From, Point To) Ends(Polygon shape) =>
        (shape.Corners[Edge], shape.Corners[(Edge + 1) % shape.Corners.Length]);
}
