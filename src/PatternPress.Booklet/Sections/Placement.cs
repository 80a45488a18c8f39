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
                ["counts"] = Counts(context),
                ["charts"] = [.. context.Sizes.SelectMany((_, i) => Chart(i, context))],
            },
            Name
        );

    /// <summary>How many blocks of each coloring each size has.</summary>
    private static ImmutableArray<Block> Counts(SectionContext context)
    {
        Labels labels = context.Labels;
        var table = new SizeTable(context, labels["block"], "", labels["fabrics"])
        {
            Summary = labels["summary-placement"],
            Alignment = CellAlignment.Number,
        };
        foreach (BlockRow row in context.Tables.Blocks)
        {
            table.Add(
                [
                    Cells.Head(Cells.Strong(row.Coloring)),
                    new TableCell(
                        context.Figures.Block(row, 40.Pt) is { } picture
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
