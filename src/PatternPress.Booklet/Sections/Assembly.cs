using System.Collections.Immutable;
using PatternPress.Booklet.Figures;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Styles;
using Block = PatternPress.Typesetting.Blocks.Block;
using PlacementChart = PatternPress.Quilting.Tables.PlacementChart;

namespace PatternPress.Booklet.Sections;

/// <summary>How blocks and sashing are sewn into the quilt's middle: in rows, a chart for each size.</summary>
internal sealed class Assembly : Section
{
    public override string Name => "assembly";

    public override ImmutableArray<Block> Build(SectionContext context) =>
        context.Fill(
            Name,
            WordData
                .Empty.With("turned", context.Tables.Placement.Any(Turned))
                .With(
                    "joined",
                    context.Tables.Sashing.Any(s => s.BySize.Any(c => c?.Joined is not null))
                )
                .With("float", Floats(context) ? context.Sized(i => Float(i, context)) : null)
                .With("trim", context.Sized(i => Trim(i, context)))
                .With("sections", context.Tables.Placement.Any(p => !p.Sections.IsEmpty))
                .With(
                    "one_block",
                    Enumerable.Range(0, context.Sizes.Length).All(i => NeedsNoDrawing(i, context))
                )
                .With(
                    "one_in_triangles",
                    !context.Tables.Triangles.IsEmpty
                        && context.Tables.Sashing.IsEmpty
                        && context.Tables.Placement.All(IsOneBlock)
                )
                .With("several_sizes", SeveralSizes(context))
                .With(
                    "partial_seams",
                    context.Tables.Placement.Any(p => p.Sections.Any(s => GoesAround(s.Join)))
                ),
            new Dictionary<string, ImmutableArray<Block>>
            {
                ["sashing"] = Sashing(context),
                ["triangles"] = Triangles(context),
                ["check"] = Check(context),
                ["charts"] = [.. Charts(context)],
            },
            Name
        );

    private static bool Turned(PlacementChart chart) =>
        chart.Rows.Any(row => row.Any(cell => cell.Turn.Quarters != 0))
        || chart.Sections.Any(section => section.Parts.Any(p => p.Block is { Turn.Quarters: > 0 }));

    private static bool SeveralSizes(SectionContext context) =>
        context
            .Sizes.Where(
                (_, i) =>
                    context
                        .Tables.Blocks.Select(row => row.BySize[i])
                        .Where(cell => cell is not null)
                        .Select(cell => (cell!.FinishedWidth, cell.FinishedHeight))
                        .Distinct()
                        .Skip(1)
                        .Any()
            )
            .Any();

    private static bool IsOneBlock(PlacementChart chart) =>
        chart.Rows is [{ Length: 1 }] || chart.Sections is [{ Parts: [{ Block: not null }] }];

    // A single block has nothing to be sewn to in the middle of the quilt.
    private static bool NeedsNoDrawing(int size, SectionContext context) =>
        IsOneBlock(context.Tables.Placement[size])
        && context.Tables.Sashing.All(row => row.BySize[size] is null)
        && context.Tables.Triangles.All(row => row.BySize[size] is null);

    private static bool GoesAround(SectionJoin join) =>
        join is SectionJoin.Clockwise or SectionJoin.Counterclockwise;

    private static ImmutableArray<Block> Sashing(SectionContext context)
    {
        if (context.Tables.Sashing.IsEmpty)
        {
            return [];
        }
        Labels labels = context.Labels;
        var table = new SizeTable(context, "", labels["piece"])
        {
            Summary = labels["summary-sashing"],
        };
        foreach (SashingRow row in context.Tables.Sashing)
        {
            string? size = Cells.Common(
                row.BySize.Select(c =>
                    c is null ? null : context.Numbers.Square(c.CutWidth, c.CutHeight)
                )
            );
            string kind = labels[
                row.Kind switch
                {
                    SashKind.Upright => "sashing-upright",
                    SashKind.Level => "sashing-level",
                    SashKind.Row => "sashing-row",
                    SashKind.Column => "sashing-column",
                    _ => "cornerstones",
                }
            ];
            string id = row.BySize.First(c => c is not null)!.Cut;
            table.Add(
                [
                    Cells.Head(size is null ? Cells.Plain(kind) : Cells.Lines(kind, size)),
                    new TableCell(Cells.Strong(id)),
                ],
                i =>
                    row.BySize[i] is not { } cell ? null
                    : size is not null && cell.Joined is null ? Cells.Strong($"{cell.Count}")
                    : Cells.Lines($"{cell.Count}", SashingSize(cell, size is null, context))
            );
        }
        return table.ToBlocks();
    }

    private static bool Floats(SectionContext context) =>
        context.Sizes.Where((_, i) => Float(i, context) is not null).Any();

    /// <summary>How far the blocks' points stay inside the seam; null where they reach it.</summary>
    private static string? Float(int size, SectionContext context) =>
        FloatOf(size, context) is { Sign: > 0 } away ? context.Numbers.Measure(away) : null;

    /// <summary>How far from the blocks' points a floating edge is cut.</summary>
    private static string? Trim(int size, SectionContext context) =>
        FloatOf(size, context) is { Sign: > 0 } away
            ? context.Numbers.Measure(away + context.Sizes[size].Seam)
            : null;

    private static Quilting.Measures.Length? FloatOf(int size, SectionContext context) =>
        size < context.Manuscript.Quilts.Length
            ? context.Manuscript.Quilts[size].Size.Quilt.Triangles?.Float
            : null;

    /// <summary>How many side and corner triangles, and the squares they are cut from.</summary>
    private static ImmutableArray<Block> Triangles(SectionContext context)
    {
        if (context.Tables.Triangles.IsEmpty)
        {
            return [];
        }
        Labels labels = context.Labels;
        var table = new SizeTable(context, "", labels["piece"])
        {
            Summary = labels["summary-triangles"],
        };
        foreach (TriangleRow row in context.Tables.Triangles)
        {
            string kind = labels[
                row.Kind == SettingPieceKind.Side ? "side-triangles-of" : "corner-triangles-of"
            ];
            string id = row.BySize.First(c => c is not null)!.Cut;
            table.Add(
                [Cells.Head(Cells.Plain(kind)), new TableCell(Cells.Strong(id))],
                i =>
                    row.BySize[i] is { } cell
                        ? Cells.Lines(
                            $"{cell.Count}",
                            labels.Format(
                                "triangles-from",
                                labels.Count("square-count", (int)cell.Squares),
                                context.Numbers.Measure(cell.Square)
                            )
                        )
                        : null
            );
        }
        return table.ToBlocks();
    }

    private static string SashingSize(SashingCell cell, bool showSize, SectionContext context)
    {
        string size = context.Numbers.Square(cell.CutWidth, cell.CutHeight);
        return cell.Joined is { } joined
                ? context.Labels.Format(
                    "from-joined",
                    size,
                    joined.Strips,
                    context.Numbers.Measure(joined.Length)
                )
            : showSize ? size
            : "";
    }

    /// <summary>What rows and the middle of the quilt measure before they are sewn to anything else.</summary>
    private static ImmutableArray<Block> Check(SectionContext context)
    {
        Labels labels = context.Labels;
        var table = new SizeTable(context, "") { Summary = labels["summary-center"] };
        table.Add(
            labels["row-of-blocks"],
            i => RowSize(i, q => q.Places.Select(p => p.Place.Height), context)
        );
        table.Add(
            labels["row-of-patches"],
            i => RowSize(i, q => q.Pieces.Where(p => p.IsPatch).Select(p => p.Edge), context)
        );
        table.Add(
            labels["row-of-sashing"],
            i =>
                RowSize(
                    i,
                    q =>
                        q.Sashes.Where(s => s.Kind != SashKind.Upright).Select(s => s.Place.Height),
                    context
                )
        );
        table.Add(
            labels[context.Tables.Borders.IsEmpty ? "center-whole" : "center-unfinished"],
            i =>
            {
                SizeColumn size = context.Sizes[i];
                return context.Numbers.Size(
                    size.CenterWidth + (size.Seam * 2),
                    size.CenterHeight + (size.Seam * 2)
                );
            }
        );
        return table.ToBlocks();
    }

    /// <summary>The size of rows that are all equally high; null where there are none, or of several heights.</summary>
    private static string? RowSize(
        int size,
        Func<Quilt, IEnumerable<Quilting.Measures.Length>> heights,
        SectionContext context
    )
    {
        if (
            size >= context.Manuscript.Quilts.Length
            || context.Manuscript.Quilts[size] is { OnPoint: true } or { Order: not null }
            || NeedsNoDrawing(size, context)
        )
        {
            // Diagonal rows are of all lengths.
            return null;
        }
        Quilting.Measures.Length[] all = [.. heights(context.Manuscript.Quilts[size]).Distinct()];
        SizeColumn column = context.Sizes[size];
        return all is [{ } height]
            ? context.Numbers.Size(
                column.CenterWidth + (column.Seam * 2),
                height + (column.Seam * 2)
            )
            : null;
    }

    private static readonly Points Abreast = 20.Pt;
    private static readonly Points LeastChart = 200.Pt;
    private static readonly Points BelowChart = 12.Pt;

    /// <summary>The sizes two by two, so that all are drawn about as large and none fills a page alone.</summary>
    private static IEnumerable<Block> Charts(SectionContext context)
    {
        int count = context.Abreast(LeastChart, Abreast, 2);
        Points width = (context.TextWidth - (Abreast * (count - 1))) / count;
        int[] inRows =
        [
            .. Enumerable
                .Range(0, context.Sizes.Length)
                .Where(i =>
                    context.Tables.Placement[i].Sections.IsEmpty && !NeedsNoDrawing(i, context)
                ),
        ];
        for (int i = 0; i < context.Sizes.Length; i++)
        {
            foreach (Block block in NeedsNoDrawing(i, context) ? [] : Sections(i, context))
            {
                yield return block;
            }
        }
        var line = new List<(Points Width, Stack Chart)>();
        Points used = 0.Pt;
        foreach (ImmutableArray<int> alike in Alike(inRows, context))
        {
            Points room = width;
            Points height = context.TextHeight.Scale(SmallChart) - AboveChart;
            if (!context.Figures.RowsTellBlocks(alike[0], room, height))
            {
                (room, height) = Large(alike[0], width, context) ?? (room, height);
            }
            if (context.Figures.Rows(alike[0], room, height) is not { } figure)
            {
                continue;
            }
            // A drawing that had to be high may still be narrow.
            Points wide = Points.Max(width, figure.Drawing.NaturalWidth);
            if (line.Count > 0 && used + Abreast + wide > context.TextWidth)
            {
                foreach (Block block in Line())
                {
                    yield return block;
                }
            }
            used = line.Count == 0 ? wide : used + Abreast + wide;
            line.Add((wide, Chart(alike, figure, context)));
        }
        foreach (Block block in Line())
        {
            yield return block;
        }

        IEnumerable<Block> Line()
        {
            if (line.Count > 0)
            {
                yield return new KeepTogether(
                    new Columns([.. line.Select(l => Column.Fixed(l.Width, l.Chart))])
                    {
                        Gap = Abreast,
                    }
                );
                yield return new Gap(BelowChart);
                line.Clear();
            }
        }
    }

    /// <summary>The part of a page that the drawing of a size and its words usually take.</summary>
    private const double SmallChart = 0.5;
    private static readonly Points AboveChart = 90.Pt;

    /// <summary>Sizes whose middle is the same share a drawing.</summary>
    private static List<ImmutableArray<int>> Alike(int[] sizes, SectionContext context)
    {
        var groups = new List<ImmutableArray<int>>();
        foreach (int size in sizes)
        {
            int known = groups.FindIndex(group => context.Figures.HaveSameRows(group[0], size));
            if (known < 0)
            {
                groups.Add([size]);
            }
            else
            {
                groups[known] = groups[known].Add(size);
            }
        }
        return groups;
    }

    /// <summary>
    /// Where the names of the blocks have no room in a drawing of the usual size, the least part of a page in which they
    /// have, if possible no wider; null where not even a page is enough.
    /// </summary>
    private static (Points Width, Points Height)? Large(
        int size,
        Points usual,
        SectionContext context
    )
    {
        foreach (Points width in new[] { usual, context.TextWidth })
        {
            for (double share = SmallChart; share <= 1; share += 0.02)
            {
                Points height = context.TextHeight.Scale(share) - AboveChart;
                if (context.Figures.RowsTellBlocks(size, width, height))
                {
                    return (width, height);
                }
            }
        }
        return null;
    }

    private static readonly Points BetweenSections = 16.Pt;
    private static readonly Points LeastSection = 38.Pt;
    private static readonly Points LeastWords = 104.Pt;

    /// <summary>The sections of a size in the order of sewing, each pulled apart with its words below, side by side.</summary>
    private static IEnumerable<Block> Sections(int size, SectionContext context)
    {
        SizeColumn column = context.Sizes[size];
        var line = new List<(Points Width, Block Block)>();
        Points used = 0.Pt;
        bool first = true;
        foreach (
            (QuiltSection section, Figure figure) in context.Figures.SectionsOf(
                size,
                new FigureRoom(
                    Points.Min(context.TextWidth, context.Grown(300.Pt)),
                    context.Grown(250.Pt)
                ),
                context.Grown(LeastSection)
            )
        )
        {
            Points width = Points.Max(
                figure.Drawing.NaturalWidth + 1.Pt,
                context.Grown(LeastWords)
            );
            if (line.Count > 0 && used + BetweenSections + width > context.TextWidth)
            {
                foreach (Block block in Line())
                {
                    yield return block;
                }
            }
            used = line.Count == 0 ? width : used + BetweenSections + width;
            SectionRow row = context.Tables.Placement[size].Sections[section.Number - 1];
            line.Add((width, new Stack([figure, new Gap(4.Pt), Caption(row, size, context)])));
        }
        foreach (Block block in Line())
        {
            yield return block;
        }

        IEnumerable<Block> Line()
        {
            if (line.Count == 0)
            {
                yield break;
            }
            Block row = new Columns([.. line.Select(l => Column.Fixed(l.Width, l.Block))])
            {
                Gap = BetweenSections,
            };
            yield return new KeepTogether(
                first
                    ? new Stack([
                        new Heading(3, context.Labels.Format("size-heading", column.Name))
                        {
                            Name = $"assembly-{column.Key}",
                        },
                        .. context.Note($"size-{column.Key}"),
                        new Text(
                            context.Labels.Format(
                                "layout-line-point",
                                context.Labels.Count("block-number", column.Blocks),
                                context.Labels.List(Counts(size, context))
                            ),
                            "small"
                        ),
                        row,
                    ])
                    : row
            );
            yield return new Gap(BelowChart);
            first = false;
            line.Clear();
            used = 0.Pt;
        }
    }

    /// <summary>"Section 3, make 2: L1, section 1, L2, from left to right. 12 1/2 × 24 1/2 in unfinished."</summary>
    private static Text Caption(SectionRow row, int size, SectionContext context)
    {
        Labels labels = context.Labels;
        bool last = row.Number == context.Tables.Placement[size].Sections.Length;
        string title = last ? labels["section-whole"] : labels.Format("section-title", row.Number);
        if (row.Count > 1)
        {
            title = labels.Format("section-make", title, row.Count);
        }
        string[] parts =
        [
            .. row.Parts.Select(part =>
                part.Block is { } cell ? BlockNames.Of(cell.Coloring, cell.Number)
                : part.Strip is { } strip ? labels.Format("section-strip", strip.Fabric)
                : labels.Format("section-part", part.Section)
            ),
        ];
        string lie = row.Join switch
        {
            _ when parts.Length == 1 => parts[0],
            SectionJoin.SideBySide => labels.Format(
                "section-side-by-side",
                FigureWords.Runs(parts)
            ),
            SectionJoin.OneBelowTheOther => labels.Format("section-below", FigureWords.Runs(parts)),
            SectionJoin.Clockwise => labels.Format(
                "section-clockwise",
                parts[0],
                parts[1],
                parts[2],
                parts[3],
                parts[4]
            ),
            _ => labels.Format(
                "section-counterclockwise",
                parts[0],
                parts[1],
                parts[2],
                parts[3],
                parts[4]
            ),
        };
        return new Text(
            [
                .. FractionText.Parse($"{title}: ", new InlineStyle { Bold = true }),
                .. FractionText.Parse(
                    labels.Format(
                        "section-measures",
                        lie,
                        context.Numbers.Size(row.UnfinishedWidth, row.UnfinishedHeight)
                    )
                ),
            ],
            "caption"
        );
    }

    private static Stack Chart(ImmutableArray<int> sizes, Figure figure, SectionContext context) =>
        new([
            new Heading(
                3,
                context.Labels.Format(
                    "size-heading",
                    context.Labels.List(sizes.Select(size => context.Sizes[size].Name))
                )
            )
            {
                Name = $"assembly-{context.Sizes[sizes[0]].Key}",
            },
            .. sizes.SelectMany(size => context.Note($"size-{context.Sizes[size].Key}")),
            new Text(Layout(sizes[0], context), "small"),
            figure with
            {
                MinWidth = figure.Drawing.NaturalWidth.Scale(0.75),
                SpaceAfter = 10.Pt,
            },
        ]);

    private static string Layout(int size, SectionContext context)
    {
        SizeColumn column = context.Sizes[size];
        string counts = context.Labels.List(Counts(size, context));
        if (!context.Tables.Patches.IsEmpty)
        {
            return context.Labels.Format(
                "layout-line-patches",
                context.Labels.Count("row-count", column.Down),
                column.Across
            );
        }
        if (column.Blocks == 1)
        {
            return context.Labels.Format(
                "layout-line-single",
                context.Labels.List(
                    context
                        .Tables.Placement[size]
                        .Counts()
                        .Keys.Select(b => BlockNames.Of(b.Coloring, b.Number))
                )
            );
        }
        return context.Manuscript.Quilts[size].OnPoint
            ? context.Labels.Format(
                "layout-line-point",
                context.Labels.Count("diagonal-row-count", column.Across + column.Down - 1),
                counts
            )
            : context.Labels.Format(
                "layout-line",
                context.Labels.Count("row-count", column.Down),
                context.Labels.Count("block-number", column.Across),
                counts
            );
    }

    // Blocks of the borders are not among them.
    private static IEnumerable<string> Counts(int size, SectionContext context)
    {
        var placed = context.Tables.Placement[size].Counts();
        return context
            .Tables.Blocks.Where(b => placed.ContainsKey((b.Coloring, b.Number)))
            .Select(b => $"{placed[(b.Coloring, b.Number)]} {BlockNames.Of(b.Coloring, b.Number)}");
    }
}
