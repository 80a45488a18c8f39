using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>
/// A square of two triangles that meet on a diagonal. The figure (role 0) lies in the corner that is named; in
/// canonical orientation that is the upper left.
/// </summary>
public sealed class HalfSquare : UnitKind
{
    public static HalfSquare Kind { get; } = new();

    private HalfSquare() { }

    public override string Keyword => "half-square";

    public override string Name => "half-square triangle unit";

    public override string Example => "half-square upper-left, ray on sky";

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
        if (width != height)
        {
            problem = UnitWords.Region(
                this,
                design,
                "half-square triangles need a region as wide as it is high",
                width,
                height,
                "make the region square in the map or the grid"
            );
            return false;
        }
        drawn = new DrawnUnit(FormOf(width), new Turn(corner), parts);
        return true;
    }

    /// <summary>The form of a given finished side.</summary>
    public static UnitForm FormOf(Length side)
    {
        Point upperLeft = Point.Origin,
            upperRight = new(side, Length.Zero),
            lowerRight = new(side, side),
            lowerLeft = new(Length.Zero, side);
        return new UnitForm(
            Kind,
            "",
            side,
            side,
            Length.Zero,
            [
                new RolePatch(new Polygon([upperLeft, upperRight, lowerLeft]), 0, [1]),
                new RolePatch(new Polygon([upperRight, lowerRight, lowerLeft]), 1, [2]),
            ],
            2
        );
    }
}
