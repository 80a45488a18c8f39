using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Finishing;

/// <summary>
/// Backing from panels as wide as the fabric: the quilt top as it is before it is bound and an overhang on every side, in
/// the direction of panels that takes less fabric. What straightens a cut edge is added once, as for every fabric.
/// </summary>
public static class BackingPlanner
{
    /// <returns>Null where a seam takes all that a panel adds.</returns>
    /// <param name="fabric">Fabric key, if the pattern names one.</param>
    /// <param name="fabricWidth">Usable width of the backing fabric.</param>
    public static BackingPlan? Plan(Quilt quilt, string? fabric, Length fabricWidth)
    {
        var house = quilt.House;
        Length topWidth = house.Unfinished(quilt.Width),
            topHeight = house.Unfinished(quilt.Height);
        Length width = house.Ruler.Up(topWidth + (house.BackingOverhang * 2));
        Length height = house.Ruler.Up(topHeight + (house.BackingOverhang * 2));
        Length loss = house.BackingSeam * 2;
        Length panelWidth =
            house.Shrinkage.Sign > 0 ? house.Ruler.Down(house.AsCut(fabricWidth)) : fabricWidth;
        if (
            StripJoin.StripsFor(width, panelWidth, loss) is not { } down
            || StripJoin.StripsFor(height, panelWidth, loss) is not { } across
        )
        {
            return null;
        }
        // Of equal lengths, fewer seams; then seams upright.
        Length lengthDown = height * down,
            lengthAcross = width * across;
        bool level = lengthAcross < lengthDown || (lengthAcross == lengthDown && across < down);
        (long panels, Length panel) = level ? (across, width) : (down, height);
        Length covered = level ? height : width;
        Length raw = panel * panels;
        Length need = house.NeededFor(raw);
        Yardage yardage = Yardage.RoundUp(need, house.YardStep, house.Thirds);
        BackingSeams seams =
            panels == 1
                ? (level ? BackingSeams.NoneAcross : BackingSeams.NoneDown)
                : (level ? BackingSeams.Level : BackingSeams.Upright);
        string Told(Length length) => HouseText.Of(length, house.Unit);
        var terms = ImmutableArray.CreateBuilder<DerivationTerm>();
        terms.Add(
            new(
                "width",
                $"{Told(topWidth)} + 2 × {Told(house.BackingOverhang)}",
                new Quantity.Measure(width)
            )
        );
        terms.Add(
            new(
                "height",
                $"{Told(topHeight)} + 2 × {Told(house.BackingOverhang)}",
                new Quantity.Measure(height)
            )
        );
        terms.Add(
            new(
                level ? "panels across" : "panels down",
                $"{panels} × {Told(panelWidth)} − {panels - 1} × {Told(loss)} ≥ {Told(covered)}",
                new Quantity.Count(panels)
            )
        );
        terms.Add(
            new(
                "the other way",
                $"{(level ? down : across)} × {Told(level ? height : width)}",
                new Quantity.Measure(level ? lengthDown : lengthAcross)
            )
        );
        terms.Add(new("panels together", $"{panels} × {Told(panel)}", new Quantity.Measure(raw)));
        if (house.Squaring.Sign > 0)
        {
            terms.Add(
                new(
                    "squaring",
                    "once, to straighten the cut edge",
                    new Quantity.Measure(house.Squaring)
                )
            );
        }
        Length straightened = raw + house.Squaring,
            allowed = straightened * (1 + house.Allowance);
        if (house.Allowance.Sign > 0)
        {
            terms.Add(
                new(
                    "allowance",
                    $"{LengthText.Mixed(house.Allowance * 100)} %",
                    new Quantity.Measure(allowed - straightened)
                )
            );
        }
        if (house.Shrinkage.Sign > 0)
        {
            terms.Add(
                new(
                    "shrinkage",
                    $"{LengthText.Mixed(house.Shrinkage * 100)} % of the length bought",
                    new Quantity.Measure(need - allowed)
                )
            );
        }
        terms.Add(
            new("to buy", $"{Told(need)}, up to what a shop cuts", new Quantity.Bought(yardage))
        );
        return new BackingPlan(
            fabric,
            width,
            height,
            house.BackingOverhang,
            fabricWidth,
            panelWidth,
            panels,
            panel,
            seams,
            loss,
            yardage,
            new Derivation("backing", terms.ToImmutable())
        );
    }
}
