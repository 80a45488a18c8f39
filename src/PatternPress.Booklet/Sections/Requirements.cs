using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Booklet.Sections;

/// <summary>What to buy: each fabric with a swatch, yardage by size; binding, backing, batting.</summary>
internal sealed class Requirements : Section
{
    public override string Name => "requirements";

    public override ImmutableArray<Block> Build(SectionContext context) =>
        context.Fill(
            Name,
            WordData
                .Empty.With("marking", context.Tables.Units.Any(u => Marks(u)))
                .With(
                    "several_uses",
                    context.Tables.Requirements.Purchases().Any(p => p.Together is not null)
                )
                .With(
                    "square_ruler",
                    SquareRuler(context) is { } side ? context.Numbers.Measure(side) : null
                )
                .With(
                    "substitute",
                    context.Tables.Substitute is { } table
                        ? context.Numbers.PanelName(table.Kind)
                        : null
                )
                .With(
                    "substitute_size",
                    context.Tables.Substitute is { } sized
                        ? context.Numbers.Size(sized.Height, sized.Width)
                        : null
                ),
            new Dictionary<string, ImmutableArray<Block>>
            {
                ["requirements"] = Chart(context),
                ["substitutes"] = Substitutes(context),
            },
            Name
        );

    /// <summary>The side of a square ruler that covers every unit; null where there are none.</summary>
    private static Length? SquareRuler(SectionContext context)
    {
        Length? largest = null;
        foreach (
            UnitCell cell in context
                .Tables.Units.SelectMany(u => u.Rows)
                .SelectMany(r => r.BySize)
                .OfType<UnitCell>()
        )
        {
            Length side = Length.Max(cell.UnfinishedWidth, cell.UnfinishedHeight);
            largest = largest is { } known ? Length.Max(known, side) : side;
        }
        return largest;
    }

    private static bool Marks(UnitTable unit) => unit.Steps.Any(step => step.Name == "mark");

    private static ImmutableArray<Block> Chart(SectionContext context)
    {
        Labels labels = context.Labels;
        RequirementsTable all = context.Tables.Requirements;
        var table = new SizeTable(context, "", labels["fabric"], labels["used-for"])
        {
            Summary = labels["summary-requirements"],
            Dense = all.Fabrics.Length > ManyFabrics,
        };
        Length? usual = UsualWidth(all);
        // A fabric bought for several uses stands where it is first met, with one total.
        foreach (var group in all.Purchases().GroupBy(p => p.Parts[0].Use))
        {
            table.Group(labels[KeyOf(group.Key)]);
            foreach (Purchase purchase in group)
            {
                AddFabric(
                    table,
                    purchase,
                    context,
                    group.Key == PurchaseUse.Backing ? null : usual
                );
            }
        }
        if (all.Batting.Any(b => b is not null))
        {
            table.Group(labels["batting"]);
            table.Add(
                [
                    new TableCell(""),
                    Cells.Head(Cells.Plain(labels["batting-at-least"])),
                    new TableCell(""),
                ],
                i =>
                    all.Batting[i] is { } batting
                        ? new Stack([
                            Cells.Plain(context.Numbers.Size(batting.Width, batting.Height)),
                            .. batting.Package is { } package
                                ?
                                [
                                    Cells.Small(labels.Format("batting-package", package.Name)),
                                    Cells.Small(
                                        context.Numbers.Size(package.Width, package.Height)
                                    ),
                                ]
                                : new[] { Cells.Small(labels["batting-none"]) },
                        ])
                        : null
            );
        }
        return table.ToBlocks();
    }

    /// <summary>How many panels do instead of yardage.</summary>
    private static ImmutableArray<Block> Substitutes(SectionContext context)
    {
        if (context.Tables.Substitute is not { } substitute)
        {
            return [];
        }
        Labels labels = context.Labels;
        var table = new SizeTable(context, "", labels["fabric"])
        {
            Summary = labels.Format(
                "summary-substitutes",
                context.Numbers.PanelName(substitute.Kind)
            ),
            Dense = substitute.Rows.Length > ManyFabrics,
        };
        foreach (SubstituteRow row in substitute.Rows)
        {
            table.Add(
                [
                    new TableCell(new Text([context.Figures.Swatch(row.Fabric)], "table")),
                    Cells.Head(
                        Cells.LetterAndName(row.Fabric, context.Fabric(row.Fabric)?.Name ?? "")
                    ),
                ],
                i =>
                    row.BySize[i] is { } cell
                        ? Cells.Strong(context.Numbers.Panels(substitute.Kind, cell.ToBuy))
                        : null
            );
        }
        return table.ToBlocks();
    }

    /// <summary>A longer list is set closer, to stay on a page.</summary>
    private const int ManyFabrics = 20;

    private static string KeyOf(PurchaseUse use) =>
        use switch
        {
            PurchaseUse.QuiltTop => "quilt-top",
            PurchaseUse.Binding => "binding",
            _ => "backing",
        };

    /// <param name="usual">The width that goes without saying.</param>
    private static void AddFabric(
        SizeTable table,
        Purchase purchase,
        SectionContext context,
        Length? usual
    )
    {
        Labels labels = context.Labels;
        Fabric? fabric = purchase.Fabric is { } key ? context.Pattern.Fabric(key) : null;
        List<string> remarks = [];
        if (fabric is { Directional: true })
        {
            remarks.Add(labels["directional-mark"]);
        }
        if (
            purchase
                .Parts.SelectMany(p => p.Row.BySize)
                .FirstOrDefault(c => c is not null)
                ?.Panels is
            { } panel
        )
        {
            remarks.Add(
                labels.Format("panel-size", context.Numbers.Size(panel.Height, panel.Width))
            );
        }
        else if (usual is not null && purchase.UsableWidth is { } own && own != usual)
        {
            remarks.Add(labels.Format("own-width", context.Numbers.Measure(own)));
        }
        Block name = fabric is null
            ? Cells.Plain(labels["your-choice"])
            : Cells.LetterAndName(fabric.Key, fabric.Name);
        table.Add(
            [
                new TableCell(
                    fabric is null
                        ? new Text("", "table")
                        : new Text([context.Figures.Swatch(fabric.Key)], "table")
                ),
                Cells.Head(
                    remarks.Count == 0
                        ? name
                        : new Stack(name, Cells.Small(string.Join(" · ", remarks)))
                ),
                new TableCell(
                    Cells.Plain(
                        fabric is null
                            ? labels["use-backing"]
                            : string.Join(", ", FabricUses.Of(fabric.Key, context))
                    )
                ),
            ],
            i => Amount(purchase, i, context)
        );
    }

    /// <summary>What to buy in all, and below it what each part of it is for.</summary>
    private static Block? Amount(Purchase purchase, int size, SectionContext context)
    {
        if (purchase.Bought(size) is not { } bought)
        {
            return null;
        }
        Text all = Cells.Strong(context.Numbers.Bought(bought));
        ImmutableArray<(PurchaseUse Use, RequirementRow Row)> parts =
        [
            .. purchase.Parts.Where(p => p.Row.BySize[size] is not null),
        ];
        return parts.Length == 1
            ? all
            : new Stack([
                all,
                .. parts.Select(p =>
                    Cells.Small(
                        context.Labels.Format(
                            "amount-for",
                            context.Labels[$"amount-{KeyOf(p.Use)}"],
                            context.Numbers.Bought(p.Row.BySize[size]!)
                        )
                    )
                ),
            ]);
    }

    private static Length? UsualWidth(RequirementsTable all) =>
        all
            .Fabrics.SelectMany(r => r.BySize)
            .Where(c => c is { Panels: null })
            .GroupBy(c => c!.UsableWidth)
            .OrderByDescending(g => g.Count())
            .ThenBy(g => g.Key)
            .Select(g => (Length?)g.Key)
            .FirstOrDefault();
}
