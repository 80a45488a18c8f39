using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Booklet.Sections;

/// <summary>The sizes side by side: what each measures and how many blocks it has.</summary>
internal sealed class Sizes : Section
{
    public override string Name => "sizes";

    public override ImmutableArray<Block> Build(SectionContext context) =>
        context.Fill(
            Name,
            null,
            new Dictionary<string, ImmutableArray<Block>> { ["sizes"] = Table(context) },
            Name
        );

    private static ImmutableArray<Block> Table(SectionContext context)
    {
        Labels labels = context.Labels;
        NumberWords numbers = context.Numbers;
        var table = new SizeTable(context, "") { Summary = labels["summary-sizes"] };
        if (context.Sizes.Length > 1)
        {
            table.Add(labels["your-size"], _ => new Text([context.Figures.TickBox()], "table"));
        }
        table.Add(
            labels["finished-quilt"],
            i => numbers.Size(context.Sizes[i].Width, context.Sizes[i].Height)
        );
        bool patches = !context.Tables.Patches.IsEmpty;
        // A block in the middle has no rows of blocks to be told; what grows around it is what makes the sizes differ.
        bool single = !patches && context.Sizes.All(size => size.Blocks == 1);
        ImmutableArray<BorderRow> borders = context.Tables.Borders;
        if (!single)
        {
            table.Add(
                labels[patches ? "patch-layout" : "layout"],
                i => context.Sizes[i].Across > 0 ? Layout(context.Sizes[i], labels) : null
            );
        }
        else if (!borders.IsEmpty)
        {
            table.Add(
                labels["finished-center"],
                i => numbers.Size(context.Sizes[i].CenterWidth, context.Sizes[i].CenterHeight)
            );
            table.Add(
                labels[
                    context.Manuscript.Quilts.Any(q => q.Borders.Any(b => b.IsRound))
                        ? "rounds-around"
                        : "borders-around"
                ],
                i => $"{borders.Count(b => b.BySize[i] is not null)}"
            );
        }
        long[] counts =
        [
            .. context.Sizes.Select(
                (size, i) =>
                    patches
                        ? size.Blocks
                        // With those of borders and rounds.
                        : context.Tables.Blocks.Sum(b => b.BySize[i]?.Count ?? 0)
            ),
        ];
        if (counts.Any(count => count > 1))
        {
            table.Add(labels[patches ? "patch-count" : "block-count"], i => $"{counts[i]}");
        }
        var rows = new List<(string Name, string?[] BySize)>();
        foreach (
            IGrouping<string, BlockRow> block in context
                .Tables.Blocks.Where(b => b.Block is not null)
                .GroupBy(b => b.Block!)
        )
        {
            rows.Add(
                (
                    block.First().Name,
                    [
                        .. context.Sizes.Select(
                            (_, i) =>
                                Joined(
                                    block
                                        .Select(b => b.BySize[i])
                                        .Where(c => c is not null)
                                        .Select(c =>
                                            numbers.Square(c!.FinishedWidth, c.FinishedHeight)
                                        )
                                )
                        ),
                    ]
                )
            );
        }
        // Blocks that are alike in every size take one row.
        if (rows.Count > 2 && rows.TrueForAll(row => row.BySize.SequenceEqual(rows[0].BySize)))
        {
            table.Add(labels["finished-blocks"], i => rows[0].BySize[i]);
        }
        else
        {
            foreach ((string name, string?[] bySize) in rows)
            {
                table.Add(labels.Format("finished-block", name), i => bySize[i]);
            }
        }
        return table.ToBlocks();
    }

    private static string? Joined(IEnumerable<string> values)
    {
        string joined = string.Join(", ", values.Distinct());
        return joined.Length == 0 ? null : joined;
    }

    // On point there are blocks in between, one less each way.
    private static string Layout(SizeColumn size, Labels labels) =>
        size.Blocks > size.Across * size.Down
            ? labels.Format(
                "across-down-point",
                size.Across,
                size.Down,
                size.Across - 1,
                size.Down - 1
            )
            : labels.Format("across-down", size.Across, size.Down);
}
