using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Booklet.Sections;

/// <summary>The borders from the inside out: how to measure, join and sew them, and how long they are.</summary>
internal sealed class Borders : Section
{
    public override string Name => "borders";

    public override ImmutableArray<Block> Build(SectionContext context)
    {
        ImmutableArray<BorderRow> borders = context.Tables.Borders;
        return borders.IsEmpty
            ? []
            : context.Fill(
                Name,
                WordData
                    .Empty.With("joined", borders.Any(IsJoined))
                    .With(
                        "mitered",
                        borders.Any(b => b.BySize.Any(c => c?.Corners == BorderCorners.Mitered))
                    ),
                new Dictionary<string, ImmutableArray<Block>>
                {
                    ["measuring"] = Measuring(context),
                    ["diagram"] = Diagram(context),
                    ["join"] = Join(context),
                    ["borders"] =
                    [
                        .. borders.Select(b => new KeepTogether(new Stack(Border(b, context)))),
                    ],
                },
                Name
            );
    }

    private static bool IsJoined(BorderRow border) =>
        border.BySize.Any(c => c is { Joined.IsEmpty: false });

    private static ImmutableArray<Block> Diagram(SectionContext context) =>
        context.Figures.Borders(
            context.ShownSize,
            context.TextWidth,
            context.TextHeight.Scale(0.25)
        )
            is { } figure
            ?
            [
                figure with
                {
                    Alignment = Alignment.Left,
                    Caption = context.Shown(context.ShownSize, context.Labels["border-order"]),
                    SpaceBefore = 4.Pt,
                    SpaceAfter = 10.Pt,
                },
            ]
            : [];

    private static ImmutableArray<Block> Join(SectionContext context) =>
        context.Pattern.House.Joins == JoinStyle.Diagonal
        && context
            .Manuscript.Quilts.SelectMany(q => q.Borders)
            .Select(b => b.Design.Fabric.Value)
            .FirstOrDefault()
            is { } fabric
            ?
            [
                context.Figures.DiagonalJoin(
                    fabric,
                    context.Grown(241.Pt),
                    context.Grown(72.Pt)
                ) with
                {
                    SpaceAfter = 8.Pt,
                },
            ]
            : [];

    private static ImmutableArray<Block> Measuring(SectionContext context) =>
        context.Figures.BorderMeasuring(
            context.ShownSize,
            context.Grown(200.Pt),
            context.Grown(96.Pt)
        )
            is { } figure
            ? [figure with { SpaceBefore = 4.Pt, SpaceAfter = 10.Pt }]
            : [];

    private static IEnumerable<Block> Border(BorderRow border, SectionContext context)
    {
        string name = CutWords.BorderName(border.Number, context);
        yield return new Heading(3, Capitalized(name)) { Name = $"border-{border.Number}" };
        foreach (Block note in context.Note($"border-{border.Number}"))
        {
            yield return note;
        }
        foreach (
            BorderCorners corners in border
                .BySize.Where(c => c is not null)
                .Select(c => c!.Corners)
                .Distinct()
        )
        {
            foreach (
                Block block in context.Fill(
                    "border",
                    WordData
                        .Empty.With(
                            "corners",
                            corners switch
                            {
                                BorderCorners.Squares => "squares",
                                BorderCorners.TopFirst => "top",
                                BorderCorners.Mitered => "mitered",
                                _ => "sides",
                            }
                        )
                        .With("border", MarkdownText.Escape(name))
                        .With(
                            "width",
                            context.Sized(i =>
                                border.BySize[i] is { } cell && cell.Corners == corners
                                    ? context.Numbers.Measure(cell.FinishedWidth)
                                    : null
                            )
                        )
                        // The steps are numbered as in the diagram of all borders: two for each.
                        .With("first", (2 * border.Number) - 1)
                        .With("second", 2 * border.Number),
                    new Dictionary<string, ImmutableArray<Block>>
                    {
                        ["strips"] = Strips(border, corners, context),
                    }
                )
            )
            {
                yield return block;
            }
        }
    }

    private static ImmutableArray<Block> Strips(
        BorderRow border,
        BorderCorners corners,
        SectionContext context
    )
    {
        Labels labels = context.Labels;
        BorderCell?[] bySize =
        [
            .. border.BySize.Select(c => c is not null && c.Corners == corners ? c : null),
        ];
        var table = new SizeTable(context, "", labels["piece"])
        {
            Summary = labels.Format("summary-border", border.Number),
        };
        foreach (
            string cut in bySize
                .SelectMany(c => c?.Joined.Select(j => j.Cut) ?? [])
                .Distinct()
                .Order(StringComparer.Ordinal)
        )
        {
            table.Add(
                [Cells.Head(Cells.Plain(labels["join-strips"])), new TableCell(Cells.Strong(cut))],
                i =>
                    bySize[i]?.Joined.FirstOrDefault(j => j.Cut == cut) is { } joined
                        ? Cells.Lines(
                            labels.Count("strip-count", joined.Strips),
                            labels.Format("joined-length", context.Numbers.Measure(joined.Length))
                        )
                        : null
            );
        }
        foreach (
            (BorderPart part, string cut) in bySize
                .SelectMany(c => c?.Parts ?? [])
                .Select(p => (p.Part, p.Cut))
                .Distinct()
                .OrderBy(p => Order(p.Part, corners))
        )
        {
            table.Add(
                [
                    Cells.Head(
                        Cells.Plain(
                            labels[
                                part switch
                                {
                                    BorderPart.Sides => "side-strips",
                                    BorderPart.TopAndBottom => "top-bottom-strips",
                                    _ => "corner-squares",
                                }
                            ]
                        )
                    ),
                    new TableCell(Cells.Strong(cut)),
                ],
                i =>
                    bySize[i]?.Parts.FirstOrDefault(p => p.Part == part && p.Cut == cut) is { } row
                        ? Cells.Lines(
                            labels.Count(
                                part == BorderPart.Corners ? "square-count" : "strip-count",
                                row.Count
                            ),
                            context.Numbers.Square(row.Width, row.Length)
                        )
                        : null
            );
        }
        table.Add(
            labels["quilt-with-border"],
            i =>
                bySize[i] is { } cell
                    ? context.Numbers.Size(
                        cell.OutsideWidth + (context.Sizes[i].Seam * 2),
                        cell.OutsideHeight + (context.Sizes[i].Seam * 2)
                    )
                    : null
        );
        return table.ToBlocks();
    }

    /// <summary>In the order they are sewn; corner squares are sewn to the second pair first.</summary>
    private static int Order(BorderPart part, BorderCorners corners) =>
        (part, corners) switch
        {
            (BorderPart.Sides, BorderCorners.TopFirst) => 2,
            (BorderPart.TopAndBottom, BorderCorners.TopFirst) => 1,
            (BorderPart.Sides, _) => 1,
            (BorderPart.Corners, _) => 2,
            _ => 3,
        };

    private static string Capitalized(string name) =>
        name.Length == 0 ? name : char.ToUpperInvariant(name[0]) + name[1..];
}
