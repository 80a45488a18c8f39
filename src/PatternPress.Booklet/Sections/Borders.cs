using System.Collections.Immutable;
using PatternPress.Booklet.Figures;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;
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
                    .With("mitered", Any(borders, c => c.Corners == BorderCorners.Mitered))
                    .With(
                        "all_mitered",
                        borders.All(b =>
                            b.BySize.All(c => c is null or { Corners: BorderCorners.Mitered })
                        )
                    )
                    .With(
                        "one_length",
                        Any(borders, c => c.Parts.Any(p => !p.Joined && IsAlongFabric(p, context)))
                    )
                    .With("pieced", Any(borders, IsPieced))
                    .With("strips", Any(borders, c => !IsPieced(c)))
                    .With("coping", Any(borders, c => c.IsCoping))
                    .With(
                        "rounds",
                        context.Manuscript.Quilts.Any(q => q.Borders.Any(b => b.IsRound))
                    )
                    .With(
                        "counts",
                        context.Sized(i => $"{borders.Count(b => b.BySize[i] is not null)}")
                    )
                    .With("counts_differ", borders.Any(b => b.BySize.Any(cell => cell is null))),
                new Dictionary<string, ImmutableArray<Block>>
                {
                    ["measuring"] = Measuring(context),
                    ["diagram"] = Diagram(context),
                    ["join"] = Join(context),
                    ["borders"] =
                    [
                        .. borders.Select(b => new KeepTogether(new Stack(Border(b, context)))
                        {
                            MostEmpty = 0.28,
                        }),
                    ],
                },
                Name
            );
    }

    private static bool Any(ImmutableArray<BorderRow> borders, Func<BorderCell, bool> holds) =>
        borders.Any(border => border.BySize.Any(cell => cell is not null && holds(cell)));

    private static bool IsAlongFabric(BorderPartRow part, SectionContext context) =>
        part.Length
        > context.Pattern.House.StripLength(
            context.Pattern.Fabric(part.Fabric)?.UsableWidth ?? context.Pattern.House.UsableWidth
        );

    private static bool IsPieced(BorderCell cell) =>
        cell.Rows.Any(row => row.Part != BorderPart.Corners);

    private static bool IsJoined(BorderRow border) =>
        border.BySize.Any(c => c is { Joined.IsEmpty: false });

    private static ImmutableArray<Block> Diagram(SectionContext context) =>
        context.Figures.Borders(
            context.ShownSize,
            context.TextWidth,
            context.TextHeight.Scale(SequenceShare(context))
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

    // Each border takes gaps of its own: many need a taller figure for the middle to be seen.
    private static double SequenceShare(SectionContext context) =>
        Math.Min(
            0.4,
            0.25
                + (
                    0.03
                    * Math.Max(
                        0,
                        context.Tables.Borders.Count(b => b.BySize[context.ShownSize] is not null)
                            - 2
                    )
                )
        );

    private static ImmutableArray<Block> Join(SectionContext context) =>
        context.Pattern.House.Joins == JoinStyle.Diagonal
        && context
            .Manuscript.Quilts.SelectMany(q => q.Borders)
            .Select(b => b.Design.Fabric?.Value)
            .FirstOrDefault(fabric => fabric is not null)
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

    /// <summary>Sizes in which a border is sewn by the same words.</summary>
    /// <param name="Sides">"both", "left", "right"; null for none.</param>
    /// <param name="Ends">"both", "top", "bottom"; null for none.</param>
    private sealed record Manner(
        BorderCorners Corners,
        bool Pieced,
        bool Coping,
        string? Sides,
        string? Ends,
        bool CornerBlocks
    )
    {
        public static Manner Of(BorderCell cell)
        {
            BorderWidths w = cell.Widths;
            return new(
                cell.Corners,
                IsPieced(cell),
                cell.IsCoping,
                Which(w.Left.Sign > 0, w.Right.Sign > 0, "left", "right"),
                Which(w.Top.Sign > 0, w.Bottom.Sign > 0, "top", "bottom"),
                cell.Rows.Any(row => row.Part == BorderPart.Corners)
            );
        }

        private static string? Which(bool one, bool other, string first, string second) =>
            one && other ? "both"
            : one ? first
            : other ? second
            : null;
    }

    private static IEnumerable<Block> Border(BorderRow border, SectionContext context)
    {
        string name = CutWords.BorderName(border.Number, context);
        yield return new Heading(
            3,
            context.Headed(Capitalized(name), i => border.BySize[i] is not null)
        )
        {
            Name = $"border-{border.Number}",
        };
        foreach (Block note in context.Note($"border-{border.Number}"))
        {
            yield return note;
        }
        List<Manner> manners =
        [
            .. border.BySize.Where(c => c is not null).Select(c => Manner.Of(c!)).Distinct(),
        ];
        foreach (Manner manner in manners)
        {
            BorderCell?[] bySize =
            [
                .. border.BySize.Select(c => c is not null && Manner.Of(c) == manner ? c : null),
            ];
            BorderCell any = bySize.First(c => c is not null)!;
            if (manners.Count > 1)
            {
                // What one size sews by other words than the next stands under its name.
                yield return new KeepWithNext(
                    new Text(
                        FractionText.Parse(
                            context.Only(i => bySize[i] is not null)!,
                            new InlineStyle { Bold = true }
                        ),
                        "body"
                    )
                );
            }
            int pairs = (manner.Sides is null ? 0 : 1) + (manner.Ends is null ? 0 : 1);
            foreach (
                Block block in context.Fill(
                    "border",
                    WordData
                        .Empty.With(
                            "corners",
                            manner.Corners switch
                            {
                                BorderCorners.Squares => "squares",
                                BorderCorners.Blocks => "blocks",
                                BorderCorners.TopFirst => "top",
                                BorderCorners.Mitered => "mitered",
                                _ => "sides",
                            }
                        )
                        .With("pieced", manner.Pieced)
                        .With("coping", manner.Coping)
                        .With("even", bySize.All(c => c is null || c.Widths.Even is not null))
                        .With("sides", manner.Sides)
                        .With("ends", manner.Ends)
                        .With("corner_block", CornerBlock(any))
                        .With("border", MarkdownText.Escape(name))
                        .With("outer", Outer(border, context))
                        .With("width", Sized(c => c.Widths.Even ?? c.Widths.Left))
                        .With(
                            "inside",
                            SizedText(c =>
                                context.Numbers.Size(
                                    c.InsideWidth + (context.Sizes[0].Seam * 2),
                                    c.InsideHeight + (context.Sizes[0].Seam * 2)
                                )
                            )
                        )
                        .With(
                            "trim",
                            SizedText(c =>
                                context.Numbers.Size(
                                    c.OutsideWidth + (context.Sizes[0].Seam * 2),
                                    c.OutsideHeight + (context.Sizes[0].Seam * 2)
                                )
                            )
                        )
                        .With(
                            "trim_width",
                            SizedText(c =>
                                context.Numbers.Measure(
                                    c.OutsideWidth + (context.Sizes[0].Seam * 2)
                                )
                            )
                        )
                        // The steps are numbered as in the diagram of all borders.
                        .With("first", context.Figures.BorderSteps.Of(border.Number, 0))
                        .With("before", Before(border, manner, manners.Count, context))
                        .With("starts", manner.Pieced ? RowStarts.Of(bySize, context) : [])
                        .With(
                            "second",
                            pairs > 1 ? context.Figures.BorderSteps.Of(border.Number, 1) : null
                        ),
                    new Dictionary<string, ImmutableArray<Block>>
                    {
                        ["strips"] = Strips(border, bySize, manner.Corners, context),
                        ["rows"] = manner.Pieced ? Rows(border, bySize, context) : [],
                    }
                )
            )
            {
                yield return block;
            }

            Sized Sized(Func<BorderCell, Quilting.Measures.Length> of) =>
                SizedText(c => context.Numbers.Measure(of(c)));

            Sized SizedText(Func<BorderCell, string> of) =>
                context.Sized(i => bySize[i] is { } cell ? of(cell) : null);
        }
    }

    /// <summary>The nearest border inside one that all sizes sew by the very same words; null where there is none.</summary>
    private static string? Before(
        BorderRow border,
        Manner manner,
        int manners,
        SectionContext context
    )
    {
        if (manners > 1)
        {
            return null;
        }
        BorderRow? inside = context.Tables.Borders.LastOrDefault(b =>
            b.Number < border.Number
            && b.BySize.Zip(border.BySize)
                .All(c => c.Second is null || (c.First is { } cell && Manner.Of(cell) == manner))
        );
        return inside is null
            ? null
            : MarkdownText.Escape(CutWords.BorderName(inside.Number, context));
    }

    /// <summary>The corner block's name; null where there is none.</summary>
    private static string? CornerBlock(BorderCell cell) =>
        cell.Rows.FirstOrDefault(row => row.Part == BorderPart.Corners) is { } corners
            ? MarkdownText.Escape(NameOf(corners.Blocks[0]))
            : null;

    /// <summary>What the next border outward is called; null where there is none.</summary>
    private static string? Outer(BorderRow border, SectionContext context) =>
        context.Tables.Borders.FirstOrDefault(b => b.Number > border.Number) is { } next
            ? MarkdownText.Escape(CutWords.BorderName(next.Number, context))
            : null;

    private static ImmutableArray<Block> Rows(
        BorderRow border,
        BorderCell?[] bySize,
        SectionContext context
    )
    {
        int size = bySize[context.ShownSize] is not null
            ? context.ShownSize
            : Array.FindIndex(bySize, cell => cell is not null);
        return context.Figures.BorderRows(size, border.Number, context.TextWidth) is { } figure
            ?
            [
                figure with
                {
                    Alignment = Alignment.Left,
                    Caption = context.Shown(size),
                    SpaceBefore = 4.Pt,
                    SpaceAfter = 8.Pt,
                },
            ]
            : [];
    }

    private static ImmutableArray<Block> Strips(
        BorderRow border,
        BorderCell?[] bySize,
        BorderCorners corners,
        SectionContext context
    )
    {
        Labels labels = context.Labels;
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
                [
                    Part(
                        labels["join-strips"],
                        i => bySize[i]?.Joined.Any(j => j.Cut == cut) == true
                    ),
                    new TableCell(Cells.Strong(cut)),
                ],
                i =>
                    bySize[i]?.Joined.FirstOrDefault(j => j.Cut == cut) is { } joined
                        ? Cells.Lines(
                            labels.Count("strip-count", joined.Strips),
                            labels.Format("joined-length", context.Numbers.Measure(joined.Length))
                        )
                        : null
            );
        }
        var parts = bySize
            .SelectMany(c => c?.Parts ?? [])
            .Select(p => (p.Part, Cut: (string?)p.Cut))
            .Concat(bySize.SelectMany(c => c?.Rows ?? []).Select(r => (r.Part, Cut: (string?)null)))
            .Distinct()
            .OrderBy(p => Order(p.Part, corners))
            .ThenBy(p => p.Part);
        foreach ((BorderPart part, string? cut) in parts)
        {
            if (cut is null)
            {
                AddRow(table, part, bySize, context);
                continue;
            }
            table.Add(
                [
                    Part(
                        labels[StripLabel(part)],
                        i => bySize[i]?.Parts.Any(p => p.Part == part && p.Cut == cut) == true
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

        // Told with its sizes where the border has it in some only.
        TableCell Part(string label, Func<int, bool> has) =>
            context.Only(has) is { } only && only != context.Only(i => bySize[i] is not null)
                ? Cells.Head(new Stack(Cells.Plain(label), Cells.Small(only)))
                : Cells.Head(Cells.Plain(label));
    }

    // A row of blocks: how many of each coloring it takes and how long it is.
    private static void AddRow(
        SizeTable table,
        BorderPart part,
        BorderCell?[] bySize,
        SectionContext context
    )
    {
        Labels labels = context.Labels;
        string[] colorings =
        [
            .. bySize
                .SelectMany(c => c?.Rows ?? [])
                .Where(r => r.Part == part)
                .SelectMany(r => r.Blocks)
                .Select(NameOf)
                .Distinct(),
        ];
        table.Add(
            [
                Cells.Head(
                    Cells.Plain(
                        labels[
                            part switch
                            {
                                BorderPart.Sides => "side-rows",
                                BorderPart.TopAndBottom => "top-bottom-rows",
                                _ => "corner-blocks",
                            }
                        ]
                    )
                ),
                new TableCell(Cells.Strong(string.Join(", ", colorings))),
            ],
            i =>
                bySize[i]?.Rows.FirstOrDefault(r => r.Part == part) is { } row
                    ? part == BorderPart.Corners
                        ? Cells.Lines(
                            labels.Count("block-count", row.Count),
                            context.Numbers.Square(row.Width, row.Length)
                        )
                        : new Stack(
                            Cells.Strong(labels.Count("row-count", row.Count)),
                            Cells.Small(Takes(row, labels)),
                            Cells.Small(context.Numbers.Square(row.Width, row.Length))
                        )
                    : null
        );
    }

    // "12 G1 and 6 G2 each".
    private static string Takes(BorderBlocksRow row, Labels labels) =>
        labels.Format(
            "row-takes",
            labels.List(
                row.Blocks.CountBy(NameOf).Select(b => labels.Format("takes-piece", b.Value, b.Key))
            )
        );

    private static string NameOf(PlacementCell cell) => BlockNames.Of(cell.Coloring, cell.Number);

    private static string StripLabel(BorderPart part) =>
        part switch
        {
            BorderPart.Sides => "side-strips",
            BorderPart.TopAndBottom => "top-bottom-strips",
            BorderPart.Left => "left-strip",
            BorderPart.Right => "right-strip",
            BorderPart.Top => "top-strip",
            BorderPart.Bottom => "bottom-strip",
            _ => "corner-squares",
        };

    /// <summary>In the order they are sewn; corner squares are sewn to the second pair first.</summary>
    private static int Order(BorderPart part, BorderCorners corners)
    {
        bool upright = part is BorderPart.Sides or BorderPart.Left or BorderPart.Right;
        return part == BorderPart.Corners ? 2
            : upright == (corners == BorderCorners.TopFirst) ? 3
            : 1;
    }

    private static string Capitalized(string name) =>
        name.Length == 0 ? name : char.ToUpperInvariant(name[0]) + name[1..];
}
