using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Source;

namespace PatternPress.Quilting.Tables;

/// <summary>Sets what has been worked out into the tables that are printed.</summary>
public static class Tabulator
{
    public static PrintedTables Tabulate(Making making)
    {
        Pattern pattern = making.Pattern;
        ImmutableArray<SizeMaking> sizes = making.Sizes;
        Aside<PlacementChart[]> charts = Aside.Start<PlacementChart[]>(() =>
            [.. sizes.Select(BlockTabulator.ChartOf)]
        );
        Aside<BorderRow[]> borders = Aside.Start<BorderRow[]>(() =>
            [.. BorderTabulator.Tabulate(making)]
        );
        Aside<SashingRow[]> sashing = Aside.Start<SashingRow[]>(() =>
            [.. SashingTabulator.Tabulate(making)]
        );
        ImmutableArray<CuttingTable> cutting = CuttingTabulator.Tabulate(making);
        ImmutableArray<UnitTable> units = UnitTabulator.Tabulate(making);
        ImmutableArray<PatchRow> patches = PatchTabulator.Tabulate(making);
        return new PrintedTables(
            pattern.Id,
            pattern.Info.Title.Value,
            pattern.Info.Edition.Value,
            pattern.House.Unit,
            [.. sizes.Select(ColumnOf)],
            FabricsOf(making),
            new RequirementsTable(
                RequirementsOf(making, FabricUse.Top),
                RequirementsOf(making, FabricUse.Binding),
                FinishingTabulator.BackingRequirements(making),
                TotalsOf(making),
                [.. sizes.Select(FinishingTabulator.Batting)]
            ),
            cutting,
            units,
            BlockTabulator.Tabulate(making),
            [.. charts.Value()],
            [.. sashing.Value()],
            TriangleTabulator.Tabulate(making),
            [.. borders.Value()],
            [.. sizes.Select(FinishingTabulator.Binding)],
            [.. sizes.Select(FinishingTabulator.Backing)],
            TemplateTabulator.Tabulate(units, patches, making),
            patches,
            FoundationTabulator.Tabulate(making),
            AppliqueTabulator.Tabulate(making),
            SubstituteOf(making),
            ScrapTabulator.Tabulate(making, cutting)
        );
    }

    private static SubstituteTable? SubstituteOf(Making making)
    {
        if (making.Pattern.Suits is not { } promise)
        {
            return null;
        }
        var rows = ImmutableArray.CreateBuilder<SubstituteRow>();
        Length? width = promise.Panel.Width;
        foreach (Fabric fabric in making.Pattern.Fabrics)
        {
            FabricPlan?[] plans =
            [
                .. making.Sizes.Select(size =>
                    size.Substitutes.FirstOrDefault(plan => plan.Fabric == fabric.Key)
                ),
            ];
            if (Array.TrueForAll(plans, plan => plan is null))
            {
                continue;
            }
            width ??= plans.First(plan => plan is not null)!.Panels!.Stock.BoughtWidth;
            rows.Add(
                new SubstituteRow(
                    fabric.Key,
                    [
                        .. plans.Select(plan =>
                            plan is null
                                ? null
                                : new SubstituteCell(
                                    plan.Panels!.ToBuy,
                                    CuttingTabulator.StripsOf(plan)!
                                )
                        ),
                    ]
                )
            );
        }
        return rows.Count == 0
            ? null
            : new SubstituteTable(
                promise.Panel.Name,
                width!.Value,
                promise.Panel.Height,
                rows.ToImmutable()
            );
    }

    private static SizeColumn ColumnOf(SizeMaking size)
    {
        Quilt quilt = size.Quilt;
        return new SizeColumn(
            size.Key,
            quilt.Size.Name,
            quilt.Width,
            quilt.Height,
            quilt.Center.Width,
            quilt.Center.Height,
            quilt.Order is null ? quilt.Size.Columns : 0,
            quilt.Order is null ? quilt.Size.Rows : 0,
            quilt.Places.Length + quilt.Pieces.Count(piece => piece.IsPatch),
            quilt.House.Seam
        );
    }

    private static ImmutableArray<FabricLabel> FabricsOf(Making making)
    {
        var used = new HashSet<string>();
        foreach (SizeMaking size in making.Sizes)
        {
            used.UnionWith(size.Cuts.Select(cut => cut.Fabric));
            if (size.Backing?.Fabric is { } backing)
            {
                used.Add(backing);
            }
        }
        return
        [
            .. making.Pattern.Fabrics.SelectWhere(
                fabric => used.Contains(fabric.Key),
                fabric => new FabricLabel(fabric.Key, fabric.Name, fabric.Directional)
            ),
        ];
    }

    private static ImmutableArray<RequirementRow> RequirementsOf(Making making, FabricUse use)
    {
        var rows = ImmutableArray.CreateBuilder<RequirementRow>();
        foreach (string fabric in FabricKeys(making, use))
        {
            rows.Add(
                new RequirementRow(
                    fabric,
                    [
                        .. making.Sizes.Select(size =>
                            size.Fabric(fabric, use) is { } plan
                                ? new RequirementCell(
                                    plan.UsableWidth,
                                    plan.Yardage,
                                    plan.Panels is { } panels ? BoughtOf(panels) : null
                                )
                                : null
                        ),
                    ]
                )
            );
        }
        return rows.ToImmutable();
    }

    private static PanelsBought BoughtOf(PanelUse panels) =>
        new(
            panels.Stock.Kind.Name,
            panels.Stock.BoughtWidth,
            panels.Stock.Kind.Height,
            panels.ToBuy
        );

    /// <summary>One row for each fabric that any size buys for several purposes in one width.</summary>
    private static ImmutableArray<RequirementRow> TotalsOf(Making making)
    {
        var rows = new List<(FabricTotal First, RequirementCell?[] BySize)>();
        for (int i = 0; i < making.Sizes.Length; i++)
        {
            foreach (FabricTotal total in FabricTotals.Of(making.Sizes[i]))
            {
                int row = rows.FindIndex(r =>
                    r.First.Fabric == total.Fabric
                    && r.First.UsableWidth == total.UsableWidth
                    && r.First.Panels?.Stock.Kind.Name == total.Panels?.Stock.Kind.Name
                );
                if (row < 0)
                {
                    row = rows.Count;
                    rows.Add((total, new RequirementCell?[making.Sizes.Length]));
                }
                rows[row].BySize[i] = new RequirementCell(
                    total.UsableWidth,
                    total.Yardage,
                    total.Panels is { } panels
                        ? BoughtOf(panels) with
                        {
                            ToBuy = total.PanelsToBuy,
                        }
                        : null
                );
            }
        }
        return [.. rows.Select(r => new RequirementRow(r.First.Fabric, [.. r.BySize]))];
    }

    /// <summary>Fabrics that any size cuts for a use, in the order of the source.</summary>
    internal static IEnumerable<string> FabricKeys(Making making, FabricUse use)
    {
        var used = new HashSet<string>();
        foreach (SizeMaking size in making.Sizes)
        {
            used.UnionWith(size.Fabrics.SelectWhere(plan => plan.Use == use, plan => plan.Fabric));
        }
        return making.Pattern.Fabrics.Select(fabric => fabric.Key).Where(used.Contains);
    }
}
