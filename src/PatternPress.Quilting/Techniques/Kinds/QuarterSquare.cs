using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>
/// A square of four triangles that meet in its center. Two parts: the first at top and bottom, the second at left
/// and right. Three parts: the first at top and bottom, the second at the left, the third at the right. Four parts:
/// clockwise from the top. The place word <c>left</c> turns two or three parts by a quarter: the first at left and
/// right, the second at the top, the third at the bottom.
/// </summary>
public sealed class QuarterSquare : UnitKind
{
    /// <summary>Variant of two roles: 0 at top and bottom, 1 at left and right.</summary>
    public const string TwoFabrics = "2";

    /// <summary>Variant of three roles: 0 at top and bottom, 1 at the left, 2 at the right.</summary>
    public const string ThreeFabrics = "3";

    /// <summary>Variant of four roles, clockwise from the top.</summary>
    public const string FourFabrics = "4";

    public static QuarterSquare Kind { get; } = new();

    private QuarterSquare() { }

    public override string Keyword => "quarter-square";

    public override string Name => "quarter-square triangle unit";

    public override string Example => "quarter-square top, ray sky";

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
            || !UnitWords.TryPlace(this, design, ["top", "left"], 0, out int place, out problem)
            || !UnitWords.TryParts(
                this,
                design,
                2,
                4,
                "2, 3 or 4 parts",
                out ImmutableArray<string> parts,
                out problem
            )
        )
        {
            return false;
        }
        if (parts.Length == 4 && design.Places.Length > 0)
        {
            problem = UnitWords.Problem(
                this,
                design.Places[0].Span,
                "four parts of a quarter-square run clockwise from the top",
                $"\"{design.Places[0].Value}\" has no meaning with 4 parts",
                "leave the place word out"
            );
            return false;
        }
        if (width != height)
        {
            problem = UnitWords.Region(
                this,
                design,
                "quarter-square triangles need a region as wide as it is high",
                width,
                height,
                "make the region square in the map or the grid"
            );
            return false;
        }
        (string top, string right, string bottom, string left) = parts.Length switch
        {
            2 => (parts[0], parts[1], parts[0], parts[1]),
            3 => (parts[0], parts[2], parts[0], parts[1]),
            _ => (parts[0], parts[1], parts[2], parts[3]),
        };
        // However it was written, equal opposite triangles make it the form of fewer fabrics.
        int turn = place;
        if (top != bottom && left == right)
        {
            turn++;
            (top, right, bottom, left) = (right, bottom, left, top);
        }
        drawn =
            top != bottom ? new(FormOf(width, FourFabrics), Turn.None, [top, right, bottom, left])
            : left == right ? new(FormOf(width, TwoFabrics), new Turn(turn), [top, left])
            : new(FormOf(width, ThreeFabrics), new Turn(turn), [top, left, right]);
        return true;
    }

    /// <summary>The form of a given finished side.</summary>
    public static UnitForm FormOf(Length side, string variant)
    {
        Point center = new(side / 2, side / 2),
            upperLeft = Point.Origin,
            upperRight = new(side, Length.Zero),
            lowerRight = new(side, side),
            lowerLeft = new(Length.Zero, side);
        (int right, int bottom, int left) = variant switch
        {
            TwoFabrics => (1, 0, 1),
            ThreeFabrics => (2, 0, 1),
            FourFabrics => (1, 2, 3),
            _ => throw new ArgumentOutOfRangeException(nameof(variant), variant, null),
        };
        // The long edge of each triangle is an outer edge and lies on the straight grain.
        return new UnitForm(
            Kind,
            variant,
            side,
            side,
            Length.Zero,
            [
                new RolePatch(new Polygon([upperLeft, upperRight, center]), 0, [1, 2]),
                new RolePatch(new Polygon([upperRight, lowerRight, center]), right, [1, 2]),
                new RolePatch(new Polygon([lowerRight, lowerLeft, center]), bottom, [1, 2]),
                new RolePatch(new Polygon([lowerLeft, upperLeft, center]), left, [1, 2]),
            ],
            variant switch
            {
                TwoFabrics => 2,
                ThreeFabrics => 3,
                _ => 4,
            }
        );
    }
}
