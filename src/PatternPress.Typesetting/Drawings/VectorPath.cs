using System.Collections.Immutable;

namespace PatternPress.Typesetting.Drawings;

/// <summary>
/// An immutable outline of straight lines and cubic curves, of any number of parts. One path may hold all patches of a
/// colour: that keeps files small.
/// </summary>
public sealed class VectorPath
{
    /// <summary>Distance of the control points from the ends of a quarter circle of radius 1: the usual cubic approximation, off by less than 0.03 %.</summary>
    public const double Quarter = 0.5522847498307936;

    internal VectorPath(ImmutableArray<PathVerb> verbs, ImmutableArray<XY> points) =>
        (Verbs, Points) = (verbs, points);

    /// <summary>The steps in order.</summary>
    public ImmutableArray<PathVerb> Verbs { get; }

    /// <summary>The points of all steps in order: one for a move or line, three for a curve, none for a close.</summary>
    public ImmutableArray<XY> Points { get; }

    public bool IsEmpty => Verbs.IsEmpty;

    /// <summary>A closed shape through the points.</summary>
    public static VectorPath Polygon(params ReadOnlySpan<XY> corners) =>
        Lines(corners, closed: true);

    /// <summary>An open line through the points.</summary>
    public static VectorPath Polyline(params ReadOnlySpan<XY> points) =>
        Lines(points, closed: false);

    public static VectorPath Rectangle(double x, double y, double width, double height) =>
        Polygon(new(x, y), new(x + width, y), new(x + width, y + height), new(x, y + height));

    /// <summary>A rectangle with rounded corners; the radius is cut to half the shorter side.</summary>
    public static VectorPath RoundedRectangle(
        double x,
        double y,
        double width,
        double height,
        double radius
    )
    {
        var r = Math.Min(radius, Math.Min(width, height) / 2);
        if (r <= 0)
        {
            return Rectangle(x, y, width, height);
        }

        var k = r * (1 - Quarter);
        var (right, bottom) = (x + width, y + height);
        return new PathBuilder()
            .MoveTo(new(x + r, y))
            .LineTo(new(right - r, y))
            .CurveTo(new(right - k, y), new(right, y + k), new(right, y + r))
            .LineTo(new(right, bottom - r))
            .CurveTo(new(right, bottom - k), new(right - k, bottom), new(right - r, bottom))
            .LineTo(new(x + r, bottom))
            .CurveTo(new(x + k, bottom), new(x, bottom - k), new(x, bottom - r))
            .LineTo(new(x, y + r))
            .CurveTo(new(x, y + k), new(x + k, y), new(x + r, y))
            .Close()
            .ToPath();
    }

    public static VectorPath Circle(XY centre, double radius) => Ellipse(centre, radius, radius);

    public static VectorPath Ellipse(XY centre, double radiusX, double radiusY)
    {
        var (x, y) = (centre.X, centre.Y);
        var (kx, ky) = (radiusX * Quarter, radiusY * Quarter);
        return new PathBuilder()
            .MoveTo(new(x + radiusX, y))
            .CurveTo(new(x + radiusX, y + ky), new(x + kx, y + radiusY), new(x, y + radiusY))
            .CurveTo(new(x - kx, y + radiusY), new(x - radiusX, y + ky), new(x - radiusX, y))
            .CurveTo(new(x - radiusX, y - ky), new(x - kx, y - radiusY), new(x, y - radiusY))
            .CurveTo(new(x + kx, y - radiusY), new(x + radiusX, y - ky), new(x + radiusX, y))
            .Close()
            .ToPath();
    }

    /// <summary>Part of a circle, open, from one angle to another in degrees (0 points right, 90 down).</summary>
    public static VectorPath Arc(XY centre, double radius, double fromDegrees, double toDegrees) =>
        new PathBuilder().ArcTo(centre, radius, fromDegrees, toDegrees).ToPath();

    /// <summary>All parts of some paths as one path.</summary>
    public static VectorPath Combine(IEnumerable<VectorPath> paths)
    {
        var verbs = ImmutableArray.CreateBuilder<PathVerb>();
        var points = ImmutableArray.CreateBuilder<XY>();
        foreach (var path in paths)
        {
            verbs.AddRange(path.Verbs);
            points.AddRange(path.Points);
        }

        return new(verbs.DrainToImmutable(), points.DrainToImmutable());
    }

    public VectorPath Transformed(Transform transform)
    {
        if (transform == Transform.Identity)
        {
            return this;
        }

        var moved = ImmutableArray.CreateBuilder<XY>(Points.Length);
        foreach (var point in Points)
        {
            moved.Add(transform.Apply(point));
        }

        return new(Verbs, moved.MoveToImmutable());
    }

    /// <summary>The smallest upright rectangle around all points, control points included: (left, top, right, bottom).</summary>
    public (double Left, double Top, double Right, double Bottom) Bounds()
    {
        if (Points.IsEmpty)
        {
            return (0, 0, 0, 0);
        }

        var (left, top, right, bottom) = (
            double.MaxValue,
            double.MaxValue,
            double.MinValue,
            double.MinValue
        );
        foreach (var (x, y) in Points)
        {
            left = Math.Min(left, x);
            top = Math.Min(top, y);
            right = Math.Max(right, x);
            bottom = Math.Max(bottom, y);
        }

        return (left, top, right, bottom);
    }

    /// <summary>The parts of the path, each as a path of its own.</summary>
    public IEnumerable<VectorPath> Parts()
    {
        var (firstVerb, firstPoint, point) = (0, 0, 0);
        for (var verb = 0; verb < Verbs.Length; verb++)
        {
            if (Verbs[verb] == PathVerb.Move && verb > firstVerb)
            {
                yield return new(Verbs[firstVerb..verb], Points[firstPoint..point]);
                (firstVerb, firstPoint) = (verb, point);
            }

            point += PointsOf(Verbs[verb]);
        }

        if (firstVerb < Verbs.Length)
        {
            yield return new(Verbs[firstVerb..], Points[firstPoint..]);
        }
    }

    /// <summary>How many points a step takes.</summary>
    public static int PointsOf(PathVerb verb) =>
        verb switch
        {
            PathVerb.Curve => 3,
            PathVerb.Close => 0,
            _ => 1,
        };

    static VectorPath Lines(ReadOnlySpan<XY> points, bool closed)
    {
        if (points.IsEmpty)
        {
            return new([], []);
        }

        var verbs = ImmutableArray.CreateBuilder<PathVerb>(points.Length + 1);
        verbs.Add(PathVerb.Move);
        for (var i = 1; i < points.Length; i++)
        {
            verbs.Add(PathVerb.Line);
        }

        if (closed)
        {
            verbs.Add(PathVerb.Close);
        }

        return new(verbs.DrainToImmutable(), [.. points]);
    }
}
