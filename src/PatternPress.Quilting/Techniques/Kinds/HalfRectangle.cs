using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>
/// A rectangle of two triangles that meet on a diagonal. The figure (role 0) lies in the corner that is named. A turn by a
/// half keeps the lean of the diagonal, a turn by a quarter does so too, but lays the rectangle down; no turn makes a unit
/// that leans to the left from one that leans to the right. In canonical orientation the rectangle stands upright and the
/// figure lies at the top: in the upper left where the diagonal leans to the right, like /, else in the upper right.
/// </summary>
public sealed class HalfRectangle : UnitKind
{
    /// <summary>Variant whose diagonal leans to the right, like /.</summary>
    public const string LeaningRight = "right";

    /// <summary>Variant whose diagonal leans to the left, like \.</summary>
    public const string LeaningLeft = "left";

    public static HalfRectangle Kind { get; } = new();

    private HalfRectangle() { }

    public override string Keyword => "half-rectangle";

    public override string Name => "half-rectangle triangle unit";

    public override string Example => "half-rectangle upper-left, ray on sky";

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
            || !UnitWords.TryPlace(this, design, Corner.Words, null, out int corner, out problem)
            || !UnitWords.TryParts(
                this,
                design,
                2,
                2,
                "2 parts, the triangle in the corner named and the other one",
                out ImmutableArray<string> parts,
                out problem
            )
        )
        {
            return false;
        }
        if (width == height)
        {
            problem = UnitWords.Region(
                this,
                design,
                "half-rectangle triangles need a region that is not square",
                width,
                height,
                $"write half-square {Corner.Words[corner]}, or change the map"
            );
            return false;
        }
        if (Length.Max(width, height) > Length.Min(width, height) * MostSlender)
        {
            problem = UnitWords.Region(
                this,
                design,
                "half-rectangle triangles this slender cannot be sewn to a point",
                width,
                height,
                $"make the region {MostSlender} times as long as wide at most"
            );
            return false;
        }
        // Upright, the figure is brought to the top by a half turn; lying, the upright unit is turned by one quarter or
        // three, so that the named corner is one that a canonical figure has.
        (string lean, int turn) = (width < height, corner) switch
        {
            (true, Corner.UpperLeft) => (LeaningRight, 0),
            (true, Corner.LowerRight) => (LeaningRight, 2),
            (true, Corner.UpperRight) => (LeaningLeft, 0),
            (true, _) => (LeaningLeft, 2),
            (false, Corner.UpperRight) => (LeaningRight, 1),
            (false, Corner.LowerLeft) => (LeaningRight, 3),
            (false, Corner.LowerRight) => (LeaningLeft, 1),
            (false, _) => (LeaningLeft, 3),
        };
        drawn = new DrawnUnit(
            FormOf(Length.Min(width, height), Length.Max(width, height), lean),
            new Turn(turn),
            parts
        );
        return true;
    }

    /// <summary>Beyond this, the seam allowances of a point lie over one another for most of its length.</summary>
    private const int MostSlender = 6;

    /// <summary>The upright form of a given finished size.</summary>
    public static UnitForm FormOf(Length width, Length height, string lean)
    {
        Point upperLeft = Point.Origin,
            upperRight = new(width, Length.Zero),
            lowerRight = new(width, height),
            lowerLeft = new(Length.Zero, height);
        return new UnitForm(
            Kind,
            lean,
            width,
            height,
            Length.Zero,
            lean == LeaningRight
                ?
                [
                    new RolePatch(new Polygon([upperLeft, upperRight, lowerLeft]), 0, [1]),
                    new RolePatch(new Polygon([upperRight, lowerRight, lowerLeft]), 1, [2]),
                ]
                :
                [
                    new RolePatch(new Polygon([upperLeft, upperRight, lowerRight]), 0, [2]),
                    new RolePatch(new Polygon([upperLeft, lowerRight, lowerLeft]), 1, [0]),
                ],
            2
        );
    }
}
