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
        Length needed = perimeter + house.BindingExtra;
        // A straight join would make a lump in a binding of several layers (common practice, no source).
        Length loss = StripJoin.Loss(Model.JoinStyle.Diagonal, width, house.Seam);
        if (StripJoin.StripsFor(needed, stripLength, loss) is not { } strips)
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
                        $"2 × ({Told(topWidth)} + {Told(topHeight)})",
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
        );
    }
}
