using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>A square on its point (role 0) with a triangle in each corner (role 1).</summary>
public sealed class SquareInSquare : UnitKind
{
    public static SquareInSquare Kind { get; } = new();

    private SquareInSquare() { }

    public override string Keyword => "square-in-square";

    public override string Name => "square-in-a-square unit";

    public override string Example => "square-in-square, core on sky";

    public override bool TryDraw(
        UnitDesign design,
        Length width,
        Length height,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        drawn = null;
        problem = UnitWords.Unwanted(this, design);
        if (
            problem is not null
            || !UnitWords.TryParts(
                this,
                design,
                2,
                2,
                "2 parts, the center and its corners",
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
                "a square-in-a-square needs a region as wide as it is high",
                width,
                height,
                "make the region square in the map or the grid"
            );
            return false;
        }
        drawn = new DrawnUnit(FormOf(width), Turn.None, parts);
        return true;
    }

    /// <summary>The form of a given finished side.</summary>
    public static UnitForm FormOf(Length side)
    {
        Length zero = Length.Zero,
            half = side / 2;
        Point upperLeft = Point.Origin,
            top = new(half, zero),
            upperRight = new(side, zero),
            right = new(side, half),
            lowerRight = new(side, side),
            bottom = new(half, side),
            lowerLeft = new(zero, side),
            left = new(zero, half);
        // Whether the center's edges are bias depends on how it is made: cut as a square of its own they are not.
        return new UnitForm(
            Kind,
            "",
            side,
            side,
            zero,
            [
                new RolePatch(new Polygon([top, right, bottom, left]), 0, []),
                new RolePatch(new Polygon([upperLeft, top, left]), 1, [1]),
                new RolePatch(new Polygon([top, upperRight, right]), 1, [2]),
                new RolePatch(new Polygon([right, lowerRight, bottom]), 1, [2]),
                new RolePatch(new Polygon([left, bottom, lowerLeft]), 1, [0]),
            ],
            2
        );
    }
}
