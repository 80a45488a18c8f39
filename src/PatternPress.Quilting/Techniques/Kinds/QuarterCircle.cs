using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Source;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>
/// A square with a quarter circle (role 0) in one corner, its center on that corner; role 1 is the ground. In canonical
/// orientation the quarter circle lies in the upper left. The trade calls blocks of it the drunkard's path.
/// </summary>
public sealed class QuarterCircle : UnitKind
{
    public static QuarterCircle Kind { get; } = new();

    private QuarterCircle() { }

    public override string Keyword => "quarter-circle";

    public override string Name => "quarter-circle unit";

    public override string Example => "quarter-circle upper-left of 3, moon on sky";

    /// <summary>The radius as a share of the side, where none is written (common practice, no source).</summary>
    private static readonly Rational UsualShare = new(3, 4);

    public override bool TryDraw(
        UnitDesign design,
        Length width,
        Length height,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        drawn = null;
        problem = UnitWords.Unwanted(this, design, places: true, measure: true);
        if (
            problem is not null
            || !UnitWords.TryPlace(this, design, Corner.Words, null, out int corner, out problem)
            || !UnitWords.TryParts(
                this,
                design,
                2,
                2,
                "2 parts, the quarter circle in the corner named and its ground",
                out ImmutableArray<string> parts,
                out problem
            )
        )
        {
            return false;
        }
        if (width != height)
        {
            problem = UnitWords.Region(
                this,
                design,
                "a quarter circle needs a region as wide as it is high",
                width,
                height,
                "make the region square in the map or the grid"
            );
            return false;
        }
        Length radius = design.Measure?.Value ?? width * UsualShare;
        if (radius.Sign <= 0 || radius >= width)
        {
            Span span = design.Measure?.Span ?? design.Span;
            problem = new UnitProblem(
                UnitProblemKind.Region,
                span,
                "the radius of a quarter circle must be less than the side of its unit",
                $"radius {Told.One(radius)}, region {design.Letter} {Told.Size(width, height)} (finished)",
                $"write a radius below {Told.One(width)}, or none for three quarters of the side, {Told.One(width * UsualShare)}"
            );
            return false;
        }
        drawn = new DrawnUnit(FormOf(width, radius), new Turn(corner), parts);
        return true;
    }

    /// <summary>The form of a given finished side and radius.</summary>
    public static UnitForm FormOf(Length side, Length radius)
    {
        Length o = Length.Zero;
        Point center = Point.Origin,
            right = new(radius, o),
            below = new(o, radius);
        return new UnitForm(
            Kind,
            "",
            side,
            side,
            radius,
            [
                new RolePatch(
                    new Polygon([center, right, below]) { Arcs = [new QuarterArc(1, center)] },
                    0,
                    [1]
                ),
                new RolePatch(
                    new Polygon([right, new(side, o), new(side, side), new(o, side), below])
                    {
                        Arcs = [new QuarterArc(4, center)],
                    },
                    1,
                    [4]
                ),
            ],
            2
        );
    }
}
