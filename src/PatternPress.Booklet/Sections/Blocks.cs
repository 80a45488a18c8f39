using System.Collections.Immutable;
using PatternPress.Booklet.Figures;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Booklet.Sections;

/// <summary>The blocks: each in colour and taken apart, how it goes together, its check size, how many of each coloring.</summary>
internal sealed class Blocks : Section
{
    public override string Name => "blocks";

    public override ImmutableArray<Block> Build(SectionContext context)
    {
        ImmutableArray<BlockRow> pieced =
        [
            .. context.Tables.Blocks.Where(b => b.Block is not null),
        ];
        ImmutableArray<BlockRow> plain = [.. context.Tables.Blocks.Where(b => b.Block is null)];
        List<IGrouping<string, BlockRow>> designs = [.. pieced.GroupBy(b => b.Block!)];
        if (designs.Count == 0 && plain.IsEmpty)
        {
            return [];
        }
        return context.Fill(
            Name,
            WordData
                .Empty.With("block_designs", designs.Count)
                .With("plain_blocks", plain.Length > 0)
                .With("pieced", pieced.Any(b => b.Parts.Length > 1)),
            new Dictionary<string, ImmutableArray<Block>>
            {
                ["blocks"] =
                [
                    .. designs.SelectMany(d => Design([.. d], context)),
                    .. Plain(plain, context),
                ],
            },
            Name
        );
    }

    private static IEnumerable<Block> Design(ImmutableArray<BlockRow> rows, SectionContext context)
    {
        BlockRow first = rows[0];
        yield return new Heading(
            3,
            Typography.Set(
                context.Headed(first.Name, i => rows.Any(row => row.BySize[i] is not null))
            )
        )
        {
            Name = $"block-{first.Block}",
        };
        foreach (Block note in context.Note($"block-{first.Block}"))
        {
            yield return note;
        }
        if (context.Pattern.Block(first.Block!) is { } design)
        {
            foreach (Block note in context.NoteOf(design))
            {
                yield return note;
            }
        }
        BlockSewing sewing = context.Figures.SewingOf(first);
        ImmutableArray<Block> picture = Pictures(first, context);
        // Beside a block that is one unit there is room for its words, and for a table that is not too wide.
        bool beside =
            first.Parts.Length == 1
            && picture is [KeepWithNext]
            && (context.Pattern.Block(first.Block!)?.Parts.Length ?? 0) <= MostPartsBeside
            && context.Sizes.Length <= MostSizesBeside;
        ImmutableArray<Block> filled = context.Fill(
            "block",
            WordData
                .Empty.With("block", MarkdownText.Escape(first.Name))
                .With("sewn_in", sewing.Way)
                .With("rows", sewing.Rows)
                .With("one_piece", first.Parts.Length == 1)
                .With("shown", MarkdownText.Escape(first.Coloring))
                .With("others", rows.Length > 1 && first.Parts.Length > 1)
                .With("groups", Groups(sewing, context))
                .With("inner", Inner(first, context))
                .With("nests", sewing.Nests)
                .With("turns", sewing.Turns)
                .With(
                    "unfinished",
                    context.Sized(i =>
                        Square(rows, i, c => (c.UnfinishedWidth, c.UnfinishedHeight), context)
                    )
                )
                .With(
                    "finished",
                    context.Sized(i =>
                        Square(rows, i, c => (c.FinishedWidth, c.FinishedHeight), context)
                    )
                ),
            new Dictionary<string, ImmutableArray<Block>>
            {
                ["picture"] = beside ? [] : picture,
                ["colorings"] = Sorting.Sorts(rows[0]) ? [] : Colorings(rows, context),
            }
        );
        if (!beside)
        {
            foreach (Block block in filled)
            {
                yield return block;
            }
            yield break;
        }
        yield return new KeepTogether(
            new Columns(Column.Natural(picture[0]), Column.Share(new Stack(filled)))
            {
                Gap = Between,
                StackBelow = context.Grown(260.Pt),
            }
        )
        {
            MostEmpty = 0.3,
        };
    }

    private const int MostPartsBeside = 3;
    private const int MostSizesBeside = 4;

    /// <summary>The blocks inside a block: their name, how many alike, what each measures before it is sewn in.</summary>
    private static ImmutableArray<WordData> Inner(BlockRow row, SectionContext context) =>
        [
            // Those that lie in others are sewn before them.
            .. row
                .Inner.Reverse()
                .Select(inner =>
                    (
                        inner.Name,
                        Size: context.Sized(i =>
                            inner.BySize[i] is { } cell
                                ? context.Numbers.Square(
                                    cell.UnfinishedWidth,
                                    cell.UnfinishedHeight
                                )
                                : null
                        )
                    )
                )
                .GroupBy(inner => inner)
                .Select(alike =>
                    WordData
                        .Empty.With("name", MarkdownText.Escape(alike.Key.Name))
                        .With("count", alike.Count())
                        .With("unfinished", alike.Key.Size)
                ),
        ];

    /// <summary>The groups within rows that are sewn before their row: "2a to 2a", with the row's number.</summary>
    private static ImmutableArray<WordData> Groups(BlockSewing sewing, SectionContext context) =>
        [
            .. sewing.Groups.Select(g =>
                WordData
                    .Empty.With("row", g.Row)
                    .With(
                        "parts",
                        context.Labels.List(
                            g.Parts.CountBy(p =>
                                    string.Join(
                                        $" {context.Labels["to"]} ",
                                        p.Select(MarkdownText.Escape)
                                    )
                                )
                                .Select(p =>
                                    p.Value == 1
                                        ? p.Key
                                        : context.Labels.Format("group-times", p.Key, p.Value)
                                )
                        )
                    )
            ),
        ];

    /// <summary>Width of the whole block with the names of its parts, and its distance from the block taken apart.</summary>
    private static readonly Points Whole = 215.Pt;
    private static readonly Points Between = 20.Pt;
    private static readonly Points LeastApart = 200.Pt;

    private static ImmutableArray<Block> Pictures(BlockRow row, SectionContext context)
    {
        Points beside = context.Grown(Whole);
        Points left = context.TextWidth - beside - Between;
        // Where the pages are too narrow for both, the block taken apart stands below.
        bool below = left < context.Grown(LeastApart);
        // A block that is one unit has been drawn with it; one of few rows is clear while small.
        bool single = row.Parts.Length == 1;
        Figure? whole = context.Figures.BlockParts(
            row,
            beside,
            context.Grown(single ? 104.Pt : 160.Pt)
        );
        Figure? apart = context.Figures.BlockApart(
            row,
            below ? context.TextWidth : left,
            context.Grown(context.Figures.SewingOf(row).Rows < 3 ? 170.Pt : 220.Pt)
        );
        return (whole, apart) switch
        {
            (null, null) => [],
            ({ } one, null) => [new KeepWithNext(one with { SpaceAfter = 8.Pt })],
            (null, { } one) => [new KeepWithNext(one with { SpaceAfter = 8.Pt })],
            ({ } upper, { } lower) when below =>
            [
                upper with
                {
                    SpaceAfter = 8.Pt,
                },
                lower,
                new Gap(8.Pt),
            ],
            ({ } first, { } second) =>
            [
                new KeepTogether(
                    new Columns(
                        new Column(new ColumnWidth.Fixed(beside), first)
                        {
                            Vertical = VerticalAlignment.Middle,
                        },
                        new Column(new ColumnWidth.Share(), second)
                        {
                            Vertical = VerticalAlignment.Middle,
                        }
                    )
                    {
                        Gap = Between,
                    }
                ),
                new Gap(8.Pt),
            ],
        };
    }

    /// <summary>Each coloring: picture, what it is sewn from, how many to make.</summary>
    private static ImmutableArray<Block> Colorings(
        ImmutableArray<BlockRow> rows,
        SectionContext context
    )
    {
        Labels labels = context.Labels;
        var table = new SizeTable(context, labels["block"], "", labels["fabrics"])
        {
            Summary = labels.Format("summary-block", rows[0].Name),
        };
        // Of blocks in several sizes each says how large it is.
        bool sized = rows.Any(row => row.Number > 1);
        foreach (BlockRow row in rows)
        {
            table.Add(
                [
                    Cells.Head(Cells.Strong(BlockNames.Of(row.Coloring, row.Number))),
                    new TableCell(
                        context.Figures.Block(row, context.Grown(44.Pt)) is { } picture
                            ? picture
                            : new Text("", "table")
                    )
                    {
                        Vertical = VerticalAlignment.Middle,
                    },
                    new TableCell(new Stack(ColoringWords.Lines(row, context).Select(Cells.Plain))),
                ],
                i =>
                    row.BySize[i] is not { } cell ? null
                    : sized
                        ? Cells.Lines(
                            labels.Format("make", cell.Count),
                            context.Numbers.Square(cell.UnfinishedWidth, cell.UnfinishedHeight)
                        )
                    : Cells.Strong(labels.Format("make", cell.Count))
            );
        }
        return table.ToBlocks();
    }

    private static IEnumerable<Block> Plain(ImmutableArray<BlockRow> rows, SectionContext context)
    {
        if (rows.IsEmpty)
        {
            yield break;
        }
        Labels labels = context.Labels;
        yield return new Heading(3, labels["plain-blocks"]) { Name = "blocks-plain" };
        var table = new SizeTable(context, labels["block"], "")
        {
            Summary = labels["plain-blocks"],
        };
        foreach (BlockRow row in rows)
        {
            string? cut = row.Parts.IsEmpty ? null : row.Parts[0].Cut;
            table.Add(
                [
                    Cells.Head(Cells.Strong(BlockNames.Of(row.Coloring, row.Number))),
                    new TableCell(Cells.Plain(cut ?? "")),
                ],
                i =>
                    row.BySize[i] is { } cell
                        ? Cells.Lines(
                            $"{cell.Count}",
                            context.Numbers.Square(cell.UnfinishedWidth, cell.UnfinishedHeight)
                        )
                        : null
            );
        }
        foreach (Block block in table.ToBlocks())
        {
            yield return block;
        }
    }

    private static string? Square(
        ImmutableArray<BlockRow> rows,
        int size,
        Func<BlockCell, (Quilting.Measures.Length Width, Quilting.Measures.Length Height)> side,
        SectionContext context
    )
    {
        IEnumerable<string> squares = rows.Select(r => r.BySize[size])
            .Where(c => c is not null)
            .Select(c => side(c!))
            .Select(s => context.Numbers.Square(s.Width, s.Height))
            .Distinct();
        string joined = string.Join(", ", squares);
        return joined.Length == 0 ? null : joined;
    }
}
