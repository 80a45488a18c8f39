using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Booklet.Sections;

/// <summary>What one block of each coloring takes: to count out stacks before sewing.</summary>
internal sealed class Sorting : Section
{
    public override string Name => "sorting";

    public override ImmutableArray<Block> Build(SectionContext context)
    {
        ImmutableArray<BlockRow> rows =
        [
            .. context.Tables.Blocks.Where(b => b.Block is not null && b.Parts.Length > 1),
        ];
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
                ),
            ];
    }

    private static ImmutableArray<Block> Table(
        ImmutableArray<BlockRow> rows,
        SectionContext context
    )
    {
        Labels labels = context.Labels;
        var table = new SizeTable(context, labels["block"], labels["one-block-takes"])
        {
            Summary = labels["summary-sorting"],
            Alignment = CellAlignment.Left,
        };
        foreach (BlockRow row in rows)
        {
            table.Add(
                [
                    Cells.Head(Cells.Strong(row.Coloring)),
                    new TableCell(Cells.Plain(labels.List(Takes(row, labels)))),
                ],
                i =>
                    row.BySize[i] is { } cell
                        ? Cells.Strong(labels.Count("block-number", cell.Count))
                        : null
            );
        }
        return table.ToBlocks();
    }

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
