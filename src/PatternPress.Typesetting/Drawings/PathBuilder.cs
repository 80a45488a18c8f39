using System.Collections.Immutable;

namespace PatternPress.Typesetting.Drawings;

/// <summary>Collects the steps of a path.</summary>
public sealed class PathBuilder
{
    readonly ImmutableArray<PathVerb>.Builder verbs = ImmutableArray.CreateBuilder<PathVerb>();
    readonly ImmutableArray<XY>.Builder points = ImmutableArray.CreateBuilder<XY>();

    public PathBuilder MoveTo(XY point) => Add(PathVerb.Move, point);

    public PathBuilder LineTo(XY point) => Add(PathVerb.Line, point);

    /// <summary>A cubic curve with two control points.</summary>
    public PathBuilder CurveTo(XY control1, XY control2, XY end) =>
        Add(PathVerb.Curve, control1, control2, end);

    /// <summary>
    /// Part of a circle from one angle to another in degrees (0 points right, 90 down); a line leads to its start, or
    /// the path begins there.
    /// </summary>
    public PathBuilder ArcTo(XY centre, double radius, double fromDegrees, double toDegrees)
    {
        var pieces = Math.Max(1, (int)Math.Ceiling(Math.Abs(toDegrees - fromDegrees) / 90 - 1e-9));
        var step = (toDegrees - fromDegrees) / pieces * Math.PI / 180;
        var reach = 4.0 / 3 * Math.Tan(step / 4) * radius;
        var angle = fromDegrees * Math.PI / 180;
        var start = On(angle);
        Add(verbs.Count == 0 ? PathVerb.Move : PathVerb.Line, start);
        for (var i = 0; i < pieces; i++)
        {
            var (next, from) = (angle + step, On(angle));
            var to = On(next);
            CurveTo(
                new(from.X - (reach * Math.Sin(angle)), from.Y + (reach * Math.Cos(angle))),
                new(to.X + (reach * Math.Sin(next)), to.Y - (reach * Math.Cos(next))),
                to
            );
            angle = next;
        }

        return this;

        XY On(double radians) =>
            new(centre.X + (radius * Math.Cos(radians)), centre.Y + (radius * Math.Sin(radians)));
    }

    public PathBuilder Close()
    {
        verbs.Add(PathVerb.Close);
        return this;
    }

    public VectorPath ToPath() => new(verbs.ToImmutable(), points.ToImmutable());

    PathBuilder Add(PathVerb verb, params ReadOnlySpan<XY> added)
    {
        verbs.Add(verb);
        foreach (var point in added)
        {
            points.Add(point);
        }

        return this;
    }
}
