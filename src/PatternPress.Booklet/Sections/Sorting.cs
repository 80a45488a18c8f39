using System.Collections.Immutable;
using PatternPress.Booklet.Figures;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Booklet.Sections;

/// <summary>
/// Every coloring with its picture, its fabrics, what one block takes and how many there are: to count out stacks before sewing.
/// </summary>
internal sealed class Sorting : Section
{
    public override string Name => "sorting";

    public override ImmutableArray<Block> Build(SectionContext context)
    {
        ImmutableArray<BlockRow> rows = [.. context.Tables.Blocks.Where(Sorts)];
        return rows.IsEmpty
            ? []
            :
            [
                new KeepTogether(
                    new Stack(
                        context.Fill(
                            Name,
                            null,
                            new Dictionary<string, ImmutableArray<Block>>
                            {
                                ["sorting"] = Table(rows, context),
                            },
                            Name
                        )
                    )
                )
                {
                    // A table is divided between rows rather than leave much of the page before empty.
                    MostEmpty = 0.3,
                },
            ];
    }

    /// <summary>Whether a block has stacks to sort; else its colorings stand with its block.</summary>
    public static bool Sorts(BlockRow row) => row.Block is not null && row.Parts.Length > 1;

    private static ImmutableArray<Block> Table(
        ImmutableArray<BlockRow> rows,
        SectionContext context
    )
    {
        Labels labels = context.Labels;
        var table = new SizeTable(
            context,
            labels["block"],
            "",
            labels["fabrics"],
            labels["one-block-takes"]
        )
        {
            Summary = labels["summary-sorting"],
        };
        Points side = context.Grown(rows.Length > ManyColorings ? 34.Pt : 44.Pt);
        foreach (BlockRow row in rows)
        {
            table.Add(
                [
                    Cells.Head(Cells.Strong(BlockNames.Of(row.Coloring, row.Number))),
                    new TableCell(
                        context.Figures.Block(row, side) is { } picture
                            ? picture
                            : new Text("", "table")
                    )
                    {
                        Vertical = VerticalAlignment.Middle,
                    },
                    new TableCell(new Stack(ColoringWords.Lines(row, context).Select(Cells.Plain))),
                    new TableCell(new Stack(Takes(row, labels).Select(Cells.Plain))),
                ],
                i =>
                    row.BySize[i] is { } cell
                        ? Cells.Strong(labels.Format("make", cell.Count))
                        : null
            );
        }
        return table.ToBlocks();
    }

    /// <summary>More colorings than this are shown smaller, so that all stand on one page.</summary>
    private const int ManyColorings = 6;

    /// <summary>"4 of Unit 1a", "4 A1", in the order they first come in the block.</summary>
    private static IEnumerable<string> Takes(BlockRow row, Labels labels) =>
        row
            .Parts.GroupBy(p => (p.Unit, p.Cut))
            .Select(g =>
                g.Key.Unit is { } unit
                    ? labels.Format("takes-unit", g.Count(), unit)
                    : labels.Format("takes-piece", g.Count(), g.Key.Cut)
            );
}
