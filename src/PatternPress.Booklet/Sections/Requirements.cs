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
            WordData.Empty.With("marking", context.Tables.Units.Any(u => Marks(u))),
            new Dictionary<string, ImmutableArray<Block>> { ["requirements"] = Chart(context) },
            Name
        );

    private static bool Marks(UnitTable unit) => unit.Steps.Any(step => step.Name == "mark");

    private static ImmutableArray<Block> Chart(SectionContext context)
    {
        Labels labels = context.Labels;
        RequirementsTable all = context.Tables.Requirements;
        var table = new SizeTable(context, "", labels["fabric"])
        {
            Alignment = CellAlignment.Number,
            Summary = labels["summary-requirements"],
        };
        Length? usual = UsualWidth(all);
        table.Group(labels["quilt-top"]);
        foreach (RequirementRow row in all.Fabrics)
        {
            AddFabric(table, row, context, null, usual);
        }
        if (!all.Binding.IsEmpty)
        {
            table.Group(labels["binding"]);
            foreach (RequirementRow row in all.Binding)
            {
                AddFabric(table, row, context, "", usual);
            }
        }
        if (!all.Backing.IsEmpty)
        {
            table.Group(labels["backing"]);
            foreach (RequirementRow row in all.Backing)
            {
                AddFabric(table, row, context, "", null);
            }
        }
        if (all.Batting.Any(b => b is not null))
        {
            table.Group(labels["batting"]);
            table.Add(
                [new TableCell(""), Cells.Head(Cells.Plain(labels["batting-at-least"]))],
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

    /// <param name="remark">Stands in for the fabric's use; empty where the group says it.</param>
    /// <param name="usual">The width that goes without saying.</param>
    private static void AddFabric(
        SizeTable table,
        RequirementRow row,
        SectionContext context,
        string? remark,
        Length? usual
    )
    {
        Labels labels = context.Labels;
        Fabric? fabric = row.Fabric is { } key ? context.Pattern.Fabric(key) : null;
        Block name = fabric is null
            ? Cells.Plain(labels["your-choice"])
            : Cells.LetterAndName(fabric.Key, fabric.Name);
        List<string> remarks = [];
        string use = remark ?? fabric?.Use ?? "";
        if (use.Length > 0)
        {
            remarks.Add(use);
        }
        if (fabric is { Directional: true })
        {
            remarks.Add(labels["directional-mark"]);
        }
        Length? width = row
            .BySize.Where(c => c is not null)
            .Select(c => (Length?)c!.UsableWidth)
            .FirstOrDefault();
        if (usual is not null && width is { } own && own != usual)
        {
            remarks.Add(labels.Format("own-width", context.Numbers.Measure(own)));
        }
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
            ],
            i =>
                row.BySize[i] is { } cell ? Cells.Strong(context.Numbers.Yards(cell.Yardage)) : null
        );
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
