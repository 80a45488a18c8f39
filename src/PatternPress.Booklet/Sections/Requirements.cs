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
                .With("square_ruler", context.Numbers.Measure(SquareRuler(context)))
                .With("long_ruler", context.Numbers.Measure(Plain(context, 24, 60))),
            new Dictionary<string, ImmutableArray<Block>> { ["requirements"] = Chart(context) },
            Name
        );

    /// <summary>The side of a square ruler that covers the largest unit; never less than the least that is sold widely.</summary>
    private static Length SquareRuler(SectionContext context)
    {
        Length largest = Plain(context, Length.FromInches(6, 1, 2), Length.FromCentimetres(16));
        foreach (
            UnitCell cell in context
                .Tables.Units.SelectMany(u => u.Rows)
                .SelectMany(r => r.BySize)
                .OfType<UnitCell>()
        )
        {
            largest = Length.Max(largest, Length.Min(cell.UnfinishedWidth, cell.UnfinishedHeight));
        }
        return largest;
    }

    private static Length Plain(SectionContext context, int inches, int centimetres) =>
        Plain(context, Length.FromInches(inches), Length.FromCentimetres(centimetres));

    private static Length Plain(SectionContext context, Length inches, Length centimetres) =>
        context.Numbers.IsMetric ? centimetres : inches;

    private static bool Marks(UnitTable unit) => unit.Steps.Any(step => step.Name == "mark");

    /// <summary>What a fabric is bought for.</summary>
    private enum Bought
    {
        QuiltTop,
        Binding,
        Backing,
    }

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
        List<(Bought For, RequirementRow Row)> rows =
        [
            .. all.Fabrics.Select(r => (Bought.QuiltTop, r)),
            .. all.Binding.Select(r => (Bought.Binding, r)),
            .. all.Backing.Select(r => (Bought.Backing, r)),
        ];
        var told = new HashSet<(string?, Length?)>();
        foreach (var group in rows.GroupBy(r => r.For))
        {
            bool headed = false;
            foreach ((Bought _, RequirementRow row) in group)
            {
                (string?, Length?) kind = (row.Fabric, WidthOf(row));
                // A fabric bought for several uses stands where it is first met, with one total.
                if (row.Fabric is not null && !told.Add(kind))
                {
                    continue;
                }
                if (!headed)
                {
                    table.Group(labels[KeyOf(group.Key)]);
                    headed = true;
                }
                List<(Bought, RequirementRow)> same = row.Fabric is null
                    ? [(group.Key, row)]
                    : [.. rows.Where(r => (r.Row.Fabric, WidthOf(r.Row)) == kind)];
                AddFabric(table, same, context, group.Key == Bought.Backing ? null : usual);
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
                        ? new Stack(
                            Cells.Plain(context.Numbers.Size(batting.Width, batting.Height)),
                            Cells.Small(
                                batting.Package is { } package
                                    ? labels.Format("batting-package", package.Name)
                                    : labels["batting-none"]
                            )
                        )
                        : null
            );
        }
        return table.ToBlocks();
    }

    /// <summary>A longer list is set closer, to stay on a page.</summary>
    private const int ManyFabrics = 20;

    private static string KeyOf(Bought use) =>
        use switch
        {
            Bought.QuiltTop => "quilt-top",
            Bought.Binding => "binding",
            _ => "backing",
        };

    private static Length? WidthOf(RequirementRow row) =>
        row.BySize.FirstOrDefault(c => c is not null)?.UsableWidth;

    /// <param name="rows">What the fabric is bought for, each with its amounts.</param>
    /// <param name="usual">The width that goes without saying.</param>
    private static void AddFabric(
        SizeTable table,
        List<(Bought For, RequirementRow Row)> rows,
        SectionContext context,
        Length? usual
    )
    {
        Labels labels = context.Labels;
        string? key = rows[0].Row.Fabric;
        Fabric? fabric = key is null ? null : context.Pattern.Fabric(key);
        List<string> remarks = [];
        if (fabric is { Directional: true })
        {
            remarks.Add(labels["directional-mark"]);
        }
        if (usual is not null && WidthOf(rows[0].Row) is { } own && own != usual)
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
                        key is null
                            ? labels["use-backing"]
                            : string.Join(", ", FabricUses.Of(key, context))
                    )
                ),
            ],
            i => Amount([.. rows.Where(r => r.Row.BySize[i] is not null)], i, context)
        );
    }

    /// <summary>What to buy in all, and below it what each part of it is for.</summary>
    private static Block? Amount(
        List<(Bought For, RequirementRow Row)> rows,
        int size,
        SectionContext context
    )
    {
        if (rows.Count == 0)
        {
            return null;
        }
        Yardage total = default;
        foreach ((Bought _, RequirementRow row) in rows)
        {
            Yardage one = row.BySize[size]!.Yardage;
            total = new Yardage(total.Exactly + one.Exactly, total.ToBuy + one.ToBuy);
        }
        Text all = Cells.Strong(context.Numbers.Yards(total));
        return rows.Count == 1
            ? all
            : new Stack([
                all,
                .. rows.Select(r =>
                    Cells.Small(
                        context.Labels.Format(
                            "amount-for",
                            context.Numbers.Yards(r.Row.BySize[size]!.Yardage),
                            context.Labels[$"amount-{KeyOf(r.For)}"]
                        )
                    )
                ),
            ]);
    }

    private static Length? UsualWidth(RequirementsTable all) =>
        all
            .Fabrics.SelectMany(r => r.BySize)
            .Where(c => c is not null)
            .GroupBy(c => c!.UsableWidth)
            .OrderByDescending(g => g.Count())
            .ThenBy(g => g.Key)
            .Select(g => (Length?)g.Key)
            .FirstOrDefault();
}
