using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>
/// A large triangle (role 0, the goose) with a small one (role 1, the sky) on either side, twice as long as high.
/// In canonical orientation the goose points up.
/// </summary>
public sealed class FlyingGeese : UnitKind
{
    public static FlyingGeese Kind { get; } = new();

    private FlyingGeese() { }

    public override string Keyword => "geese";

    public override string Name => "flying geese unit";

    public override string Example => "geese up, ray on sky";

    public override bool TryDraw(
        UnitDesign design,
        Length width,
        Length height,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        drawn = null;
        problem = UnitWords.Unwanted(this, design, places: true);
        if (
            problem is not null
            || !UnitWords.TryPlace(
                this,
                design,
                ["up", "right", "down", "left"],
                null,
                out int quarters,
                out problem
            )
            || !UnitWords.TryParts(
                this,
                design,
                2,
                2,
                "2 parts, the goose and its sky",
                out ImmutableArray<string> parts,
                out problem
            )
        )
        {
            return false;
        }
        var turn = new Turn(quarters);
        (Length along, Length point) = turn.SwapsSides ? (height, width) : (width, height);
        if (along != point * 2)
        {
            string points = design.Places[0].Value;
            bool otherWay = point == along * 2;
            problem = UnitWords.Region(
                this,
                design,
                turn.SwapsSides
                    ? $"flying geese that point {points} need a region twice as high as it is wide"
                    : $"flying geese that point {points} need a region twice as wide as it is high",
                width,
                height,
                otherWay
                    ? turn.SwapsSides
                        ? "should they point up or down?"
                        : "should they point left or right?"
                    : $"make the region {(turn.SwapsSides ? "1 × 2" : "2 × 1")} equal cells of the map"
            );
            return false;
        }
        drawn = new DrawnUnit(FormOf(point), turn, parts);
        return true;
    }

    /// <summary>The form of a given finished height; its width is twice that.</summary>
    public static UnitForm FormOf(Length height)
    {
        Length zero = Length.Zero,
            width = height * 2;
        Point upperLeft = Point.Origin,
            point = new(height, zero),
            upperRight = new(width, zero),
            lowerRight = new(width, height),
            lowerLeft = new(zero, height);
        return new UnitForm(
            Kind,
            "",
            width,
            height,
            zero,
            [
                new RolePatch(new Polygon([point, lowerRight, lowerLeft]), 0, [0, 2]),
                new RolePatch(new Polygon([upperLeft, point, lowerLeft]), 1, [1]),
                new RolePatch(new Polygon([point, upperRight, lowerRight]), 1, [2]),
            ],
            2
        );
    }
}
