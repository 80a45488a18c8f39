using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Cutting;

/// <summary>A fabric that serves several purposes in one width, bought at once.</summary>
/// <param name="Yardage">The exact needs together, rounded once; nothing where it is bought in panels.</param>
/// <param name="Panels">One of its parts, which says what the panels are; null for fabric by the yard.</param>
/// <param name="PanelsToBuy">Panels for all purposes, and the house's allowance of them for mistakes.</param>
public sealed record FabricTotal(
    string Fabric,
    Length UsableWidth,
    Yardage Yardage,
    PanelUse? Panels,
    long PanelsToBuy,
    Derivation Derivation
);

/// <summary>
/// What a fabric takes for all its purposes: quilt top, binding, backing. Adding amounts that are already rounded would
/// buy up to a step of the shop too much for each purpose, so the exact needs are added and rounded once.
/// </summary>
public static class FabricTotals
{
    private sealed record Part(
        string Name,
        string Source,
        string Fabric,
        Length UsableWidth,
        Length Need,
        PanelUse? Panels
    );

    /// <summary>One for each fabric with more than one purpose, in the order in which it is first met.</summary>
    public static IEnumerable<FabricTotal> Of(SizeMaking size)
    {
        List<Part> parts = PartsOf(size);
        foreach (
            var alike in parts.GroupBy(p => (p.Fabric, p.UsableWidth, p.Panels?.Stock.Kind.Name))
        )
        {
            List<Part> several = [.. alike];
            if (several.Count > 1)
            {
                yield return Together(several, size.Quilt.House);
            }
        }
    }

    private static List<Part> PartsOf(SizeMaking size)
    {
        var parts = new List<Part>();
        foreach (FabricPlan plan in size.Fabrics)
        {
            bool binding = plan.Use == FabricUse.Binding;
            parts.Add(
                new Part(
                    binding ? "binding" : "quilt top",
                    binding ? "see binding" : $"see fabric {plan.Fabric}",
                    plan.Fabric,
                    plan.UsableWidth,
                    plan.Yardage.Exactly,
                    plan.Panels
                )
            );
        }
        if (size.Backing is { Fabric: { } fabric } backing)
        {
            parts.Add(
                new Part(
                    "backing",
                    "see backing",
                    fabric,
                    backing.FabricWidth,
                    backing.Yardage.Exactly,
                    null
                )
            );
        }
        return parts;
    }

    private static FabricTotal Together(List<Part> parts, House house)
    {
        (string fabric, Length width) = (parts[0].Fabric, parts[0].UsableWidth);
        var terms = ImmutableArray.CreateBuilder<DerivationTerm>();
        if (parts[0].Panels is { } panels)
        {
            long cut = 0;
            foreach (Part part in parts)
            {
                cut += part.Panels!.Count;
                terms.Add(
                    new(
                        part.Name,
                        part.Source,
                        new Quantity.Panels(part.Panels.Count, panels.Stock.Kind)
                    )
                );
            }
            long buy = (new Rational(cut) * (1 + house.Allowance)).Ceiling();
            terms.Add(
                new(
                    "to buy",
                    house.Allowance.Sign > 0
                        ? $"with {LengthText.Mixed(house.Allowance * 100)} % for mistakes"
                        : "together",
                    new Quantity.Panels(buy, panels.Stock.Kind)
                )
            );
            return new FabricTotal(
                fabric,
                width,
                Yardage.None,
                panels,
                buy,
                new Derivation($"total {fabric}", terms.ToImmutable())
            );
        }
        Length need = Length.Zero;
        foreach (Part part in parts)
        {
            need += part.Need;
            terms.Add(new(part.Name, part.Source, new Quantity.Measure(part.Need)));
        }
        var yardage = Yardage.RoundUp(need, house.YardStep, house.Thirds);
        terms.Add(new("needed", "along the fabric", new Quantity.Measure(need)));
        terms.Add(
            new(
                "to buy",
                $"{HouseText.Of(need, house.Unit)}, rounded up once",
                new Quantity.Bought(yardage)
            )
        );
        return new FabricTotal(
            fabric,
            width,
            yardage,
            null,
            0,
            new Derivation($"total {fabric}", terms.ToImmutable())
        );
    }
}
