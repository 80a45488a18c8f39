using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Finishing;

/// <summary>
/// Straight-grain binding: the way around the quilt top and an extra for corners and the closing join, from strips joined
/// diagonally, each join taking a strip's width. The edge that is bound is that of the unbound top: a seam allowance
/// beyond the finished quilt on every side.
/// </summary>
public static class BindingPlanner
{
    /// <returns>Null where the strips are too short to be joined at all.</returns>
    /// <param name="cut">Id of the strips.</param>
    /// <param name="stripLength">Usable width of the fabric.</param>
    public static BindingPlan? Plan(Quilt quilt, string cut, Length stripLength)
    {
        var design = quilt.Size.Quilt.Binding!;
        var house = quilt.House;
        Length width = house.Ruler.Up(design.Width ?? house.BindingWidth);
        Length topWidth = house.Unfinished(quilt.Width),
            topHeight = house.Unfinished(quilt.Height);
        Length perimeter = (topWidth + topHeight) * 2;
        Length straight = perimeter;
        Length? radius = quilt.Size.Quilt.RoundedCorners?.Value;
        if (radius is { } finished)
        {
            // Round a corner the raw edge runs a quarter of a circle instead of two radii.
            Length raw = finished + house.Seam;
            perimeter = house.Ruler.Up(perimeter - (raw * 8) + (raw * 2 * _pi));
        }
        Length needed = perimeter + house.BindingExtra;
        // A straight join would make a lump in a binding of several layers (common practice, no source).
        Length loss = StripJoin.Loss(Model.JoinStyle.Diagonal, width, house.Seam);
        Length? square = null;
        long strips;
        if (design.Bias)
        {
            Length step = house.Unit is LengthUnit.Inch or LengthUnit.Yard
                ? Length.FromInches(1)
                : Length.FromCentimetres(1);
            if (
                BiasSquare.For(needed, width, house.Seam, stripLength, step, loss)
                is not { } squares
            )
            {
                return null;
            }
            (strips, square) = (squares.Squares, squares.Side);
            stripLength = house.Ruler.Down(BiasSquare.Yield(squares.Side, width, house.Seam));
            // What is left after rounding may lack a hair.
            if ((stripLength * strips) - (loss * (strips - 1)) < needed)
            {
                square += step;
                stripLength = house.Ruler.Down(BiasSquare.Yield(square.Value, width, house.Seam));
            }
        }
        else if (StripJoin.StripsFor(needed, stripLength, loss) is { } count)
        {
            strips = count;
        }
        else
        {
            return null;
        }
        string Told(Length length) => HouseText.Of(length, house.Unit);
        return new BindingPlan(
            design.Fabric.Value,
            cut,
            width,
            stripLength,
            perimeter,
            house.BindingExtra,
            loss,
            strips,
            new Derivation(
                "binding strips",
                [
                    new(
                        "perimeter",
                        radius is null
                            ? $"2 × ({Told(topWidth)} + {Told(topHeight)})"
                            : $"{Told(straight)} less 8 × ({Told(radius.Value)} + {Told(house.Seam)}) and a circle of that radius",
                        new Quantity.Measure(perimeter)
                    ),
                    new(
                        "extra",
                        "for corners and the closing join",
                        new Quantity.Measure(house.BindingExtra)
                    ),
                    new("needed", "perimeter + extra", new Quantity.Measure(needed)),
                    new("a join takes", "the strip's width", new Quantity.Measure(loss)),
                    new(
                        "strips",
                        $"{strips} × {Told(stripLength)} − {strips - 1} × {Told(loss)} = "
                            + $"{Told((stripLength * strips) - (loss * (strips - 1)))}",
                        new Quantity.Count(strips)
                    ),
                ]
            )
        )
        {
            Square = square,
            Radius = radius,
        };
    }

    // A little more than π, by three parts in ten millions: a circle is not an exact number, and a binding must not be short.
    private static readonly Rational _pi = new(355, 113);
}
