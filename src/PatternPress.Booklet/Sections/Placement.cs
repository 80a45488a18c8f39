using System.Collections.Immutable;
using PatternPress.Booklet.Figures;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Booklet.Sections;

/// <summary>Where each colour goes: every size drawn large with letters and hatches, and the blocks counted.</summary>
internal sealed class Placement : Section
{
    public override string Name => "placement";

    public override ImmutableArray<Block> Build(SectionContext context) =>
        context.Fill(
            Name,
            WordData.Empty.With("colorings", context.Tables.Blocks.Length),
            new Dictionary<string, ImmutableArray<Block>>
            {
                ["gallery"] = Gallery(context),
                ["counts"] = Counts(context),
                ["keys"] = Keys(context),
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
        var table = new SizeTable(context, labels["block"], labels["fabrics"])
        {
            Summary = labels["summary-placement"],
        };
        foreach (BlockRow row in context.Tables.Blocks)
        {
            table.Add(
                [
                    Cells.Head(Cells.Strong(BlockNames.Of(row.Coloring, row.Number))),
                    new TableCell(Cells.Plain(ColoringWords.Line(row, context))),
                ],
                i => row.BySize[i] is { } cell ? Cells.Strong($"{cell.Count}") : null
            );
        }
        return table.ToBlocks();
    }

    /// <summary>Every coloring of the blocks enlarged, with hatches and letters in its patches.</summary>
    private static ImmutableArray<Block> Keys(SectionContext context)
    {
        const int most = 4,
            abreast = 3;
        Points gap = 20.Pt;
        // A plain block is told by the table above.
        ImmutableArray<BlockRow> rows =
        [
            .. context.Tables.Blocks.Where(row => row.Block is not null),
        ];
        // Few blocks stay as large as those of many.
        int columns = rows.Length <= most ? Math.Max(rows.Length, abreast) : abreast;
        Points side = (context.TextWidth - (gap * (columns - 1))) / columns;
        var blocks = ImmutableArray.CreateBuilder<Block>();
        foreach (BlockRow[] line in rows.Chunk(columns))
        {
            ImmutableArray<Column> row =
            [
                .. line.Select(r => (r, Figure: context.Figures.Block(r, side)))
                    .Where(b => b.Figure is not null)
                    .Select(b =>
                        Column.Fixed(
                            side,
                            b.Figure! with
                            {
                                Caption = new Text(
                                    [
                                        .. FractionText.Parse(
                                            $"{BlockNames.Of(b.r.Coloring, b.r.Number)}: ",
                                            new InlineStyle { Bold = true }
                                        ),
                                        .. FractionText.Parse(ColoringWords.Line(b.r, context)),
                                    ],
                                    "caption"
                                ),
                            }
                        )
                    ),
            ];
            if (!row.IsEmpty)
            {
                blocks.Add(new KeepTogether(new Columns(row) { Gap = gap }));
                blocks.Add(new Gap(10.Pt));
            }
        }
        return blocks.ToImmutable();
    }

    private static IEnumerable<Block> Chart(int size, SectionContext context)
    {
        SizeColumn column = context.Sizes[size];
        if (
            context.Figures.Placement(size, context.TextWidth, context.TextHeight - 32.Pt)
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
