using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Booklet.Sections;

/// <summary>Where each colour goes: every size drawn large with letters and hatches, and the blocks counted.</summary>
internal sealed class Placement : Section
{
    public override string Name => "placement";

    public override ImmutableArray<Block> Build(SectionContext context) =>
        context.Fill(
            Name,
            null,
            new Dictionary<string, ImmutableArray<Block>>
            {
                ["gallery"] = Gallery(context),
                ["counts"] = Counts(context),
                ["charts"] = [.. context.Sizes.SelectMany((_, i) => Chart(i, context))],
            },
            Name
        );

    /// <summary>All sizes in color, side by side and at one scale.</summary>
    private static ImmutableArray<Block> Gallery(SectionContext context)
    {
        const int most = 6;
        int count = Math.Min(most, context.Sizes.Length);
        if (count == 0)
        {
            return [];
        }
        Points gap = 14.Pt;
        Points room = context.TextWidth - (gap * (count - 1));
        double[] widths = [.. context.Sizes.Take(count).Select(s => s.Width.Inches.ToDouble())];
        double highest = context.Sizes.Take(count).Max(s => s.Height.Inches.ToDouble());
        double scale = Math.Min(room.Value / widths.Sum(), 210 / highest);
        var columns = ImmutableArray.CreateBuilder<Column>();
        for (int i = 0; i < count; i++)
        {
            Points width = Points.Of(widths[i] * scale);
            Points height = Points.Of(context.Sizes[i].Height.Inches.ToDouble() * scale) + 2.Pt;
            if (context.Figures.Quilt(i, width, height) is { } figure)
            {
                columns.Add(
                    new Column(
                        new ColumnWidth.Fixed(width),
                        figure with
                        {
                            Caption = new Text(context.Sizes[i].Name, "caption"),
                        }
                    )
                    {
                        Vertical = VerticalAlignment.Bottom,
                    }
                );
            }
        }
        return columns.Count == 0
            ? []
            : [new Gap(4.Pt), new Columns(columns.ToImmutable()) { Gap = gap }, new Gap(12.Pt)];
    }

    /// <summary>How many blocks of each coloring each size has.</summary>
    private static ImmutableArray<Block> Counts(SectionContext context)
    {
        Labels labels = context.Labels;
        var table = new SizeTable(context, labels["block"], "", labels["fabrics"])
        {
            Summary = labels["summary-placement"],
            Alignment = CellAlignment.Number,
        };
        // Many colorings are shown smaller, so that all stand on one page.
        Points side = context.Tables.Blocks.Length > 6 ? 24.Pt : 40.Pt;
        foreach (BlockRow row in context.Tables.Blocks)
        {
            table.Add(
                [
                    Cells.Head(Cells.Strong(row.Coloring)),
                    new TableCell(
                        context.Figures.Block(row, side) is { } picture
                            ? picture
                            : new Text("", "table")
                    )
                    {
                        Vertical = VerticalAlignment.Middle,
                    },
                    new TableCell(Cells.Plain(Fabrics(row, context))),
                ],
                i => row.BySize[i] is { } cell ? Cells.Strong($"{cell.Count}") : null
            );
        }
        return table.ToBlocks();
    }

    private static string Fabrics(BlockRow row, SectionContext context) =>
        context.Pattern.Coloring(row.Coloring) is { } coloring
            ? string.Join(
                ", ",
                context
                    .Tables.Fabrics.Where(f => coloring.Fabrics.ContainsValue(f.Key))
                    .Select(f => f.Key)
            )
            : "";

    private static IEnumerable<Block> Chart(int size, SectionContext context)
    {
        SizeColumn column = context.Sizes[size];
        if (
            context.Figures.Placement(size, context.TextWidth, context.TextHeight - 70.Pt)
            is not { } figure
        )
        {
            yield break;
        }
        yield return new PageBreak();
        yield return new Heading(
            3,
            context.Labels.Format(
                "size-measuring",
                column.Name,
                context.Numbers.Size(column.Width, column.Height)
            )
        )
        {
            Name = $"placement-{column.Key}",
        };
        yield return figure with
        {
            Alignment = Alignment.Centre,
            MinWidth = figure.Drawing.NaturalWidth.Scale(0.7),
        };
    }
}
