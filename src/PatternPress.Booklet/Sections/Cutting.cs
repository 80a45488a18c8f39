using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Booklet.Sections;

/// <summary>
/// What to cut from each fabric: first the strips across the width of the fabric, then the pieces, a column for each
/// size.
/// </summary>
internal sealed class Cutting : Section
{
    public override string Name => "cutting";

    public override ImmutableArray<Block> Build(SectionContext context) =>
        context.Tables.Cutting.IsEmpty
            ? []
            : context.Fill(
                Name,
                CuttingLegend
                    .Of(context)
                    .With("beside", Strips(context).Any(s => s.Beside is not null))
                    .With(
                        "substitute",
                        context.Tables.Substitute is { } substitute
                            ? context.Numbers.PanelName(substitute.Kind)
                            : null
                    ),
                new Dictionary<string, ImmutableArray<Block>>
                {
                    ["tables"] = [.. context.Tables.Cutting.Select(c => WithDiagrams(c, context))],
                },
                Name
            );

    /// <summary>
    /// Rather than leave more than this share of a page empty, a fabric is divided between its table and its diagrams, or
    /// its table between rows.
    /// </summary>
    private const double MostEmpty = 0.3;

    private static Block WithDiagrams(CuttingTable cutting, SectionContext context)
    {
        var table = new KeepTogether(new Stack([.. Fabric(cutting, context)]))
        {
            MostEmpty = MostEmpty,
        };
        ImmutableArray<Block> diagrams = [.. Diagrams(cutting, context)];
        return diagrams.IsEmpty
            ? table
            : new KeepTogether(new Stack([table, .. diagrams])) { MostEmpty = MostEmpty };
    }

    private static IEnumerable<StripRow> Strips(SectionContext context) =>
        context.Tables.Cutting.SelectMany(c => c.BySize).SelectMany(l => l?.Strips ?? []);

    /// <summary>The strips that give several kinds of piece, drawn to scale, a figure for each size that has any.</summary>
    private static IEnumerable<Block> Diagrams(CuttingTable cutting, SectionContext context)
    {
        var mixed = new List<Figure>();
        var panels = new List<(int Size, StripList List)>();
        for (int i = 0; i < context.Sizes.Length; i++)
        {
            if (cutting.BySize[i] is not { } list)
            {
                continue;
            }
            if (list.Panels is not null)
            {
                panels.Add((i, list));
            }
            else if (
                list.Strips.Any(IsMixed)
                && context.Figures.MixedCutting(
                    cutting,
                    i,
                    DiagramWidth(context),
                    context.Grown(list.Strips.Any(s => s.Beside is not null) ? 250.Pt : 150.Pt)
                )
                    is { } figure
            )
            {
                mixed.Add(Headed(figure));
            }
        }
        SubstituteRow? row =
            cutting.Use == FabricUse.Top
                ? context.Tables.Substitute?.Rows.FirstOrDefault(r => r.Fabric == cutting.Fabric)
                : null;
        var substitutes = new List<(int Size, StripList List)>();
        for (int i = 0; row is not null && i < context.Sizes.Length; i++)
        {
            if (row.BySize[i] is { } cell)
            {
                substitutes.Add((i, cell.Strips));
            }
        }
        return SideBySide(mixed, Abreast(context))
            .Concat(PanelFigures(cutting, panels, null, PanelFigureHeight, context))
            .Concat(
                PanelFigures(
                    cutting,
                    substitutes,
                    "substitute-diagram",
                    SubstituteFigureHeight,
                    context
                )
            );
    }

    private static IEnumerable<Block> SideBySide(List<Figure> figures, int perRow)
    {
        for (int i = 0; i < figures.Count; i += perRow)
        {
            List<Figure> here = figures.GetRange(i, Math.Min(perRow, figures.Count - i));
            yield return here.Count == 1
                ? new KeepTogether(here[0])
                : new KeepTogether(
                    new Columns([
                        .. here.Select(figure => new Column(new ColumnWidth.Share(), figure)),
                        // As narrow as those of a full row.
                        .. Enumerable.Repeat(
                            new Column(new ColumnWidth.Share(), new Stack([])),
                            perRow - here.Count
                        ),
                    ])
                    {
                        Gap = 20.Pt,
                    }
                );
        }
    }

    // The name of its size stands over it: under it, it could be read as the name of the next.
    private static Figure Headed(Figure figure) =>
        figure with
        {
            SpaceBefore = 2.Pt,
            SpaceAfter = 8.Pt,
        };

    private static Figure Captioned(Figure figure, string caption) =>
        figure with
        {
            Caption = new Text(caption, "caption"),
            SpaceBefore = 2.Pt,
            SpaceAfter = 8.Pt,
        };

    /// <summary>Panels no wider than this stand up to three side by side.</summary>
    private static readonly Length NarrowPanel = Length.FromInches(24);

    private static readonly Points LeastPanel = 100.Pt;
    private static readonly Points PanelGap = 20.Pt;

    private static IEnumerable<Block> PanelFigures(
        CuttingTable cutting,
        List<(int Size, StripList List)> lists,
        string? caption,
        Points height,
        SectionContext context
    )
    {
        bool narrow = lists.TrueForAll(l => l.List.Panels!.Width <= NarrowPanel);
        int abreast = narrow ? context.Abreast(LeastPanel, PanelGap, 3) : Abreast(context);
        Points width = narrow
            ? (context.TextWidth - PanelGap.Scale(abreast - 1)).Scale(1.0 / abreast)
            : DiagramWidth(context);
        var figures = new List<Figure>();
        foreach ((int size, StripList list) in lists)
        {
            if (
                context.Figures.PanelCutting(
                    cutting.Fabric,
                    context.Sizes[size].Name,
                    list,
                    width,
                    context.Grown(height)
                ) is
                { } drawn
            )
            {
                figures.Add(
                    caption is null
                        ? Headed(drawn)
                        : Captioned(
                            drawn,
                            context.Labels.Format(
                                caption,
                                cutting.Fabric,
                                context.Sizes[size].Name,
                                context.Numbers.PanelName(list.Panels!.Kind),
                                context.Numbers.Size(list.Panels.Height, list.Panels.Width)
                            )
                        )
                );
            }
        }
        return SideBySide(figures, abreast);
    }

    /// <summary>More panels than go into this height are drawn smaller.</summary>
    private static readonly Points PanelFigureHeight = 250.Pt;
    private static readonly Points LeastDiagram = 220.Pt;

    private static int Abreast(SectionContext context) => context.Abreast(LeastDiagram, 20.Pt, 2);

    private static Points DiagramWidth(SectionContext context) =>
        Abreast(context) == 1 ? context.TextWidth : context.TextWidth.Scale(0.47);

    private static readonly Points SubstituteFigureHeight = 160.Pt;

    private static bool IsMixed(StripRow strip) =>
        strip.Pieces.Length > 1 || strip.Beside is not null;

    private static IEnumerable<Block> Fabric(CuttingTable cutting, SectionContext context)
    {
        Labels labels = context.Labels;
        FabricLabel? fabric = context.Fabric(cutting.Fabric);
        yield return new Heading(
            3,
            [
                context.Figures.Swatch(cutting.Fabric),
                new Run("\u2002"),
                .. FractionText.Parse(
                    context.Headed(
                        cutting.Use == FabricUse.Binding
                            ? labels.Format("fabric-for-binding", cutting.Fabric, fabric?.Name)
                            : $"{cutting.Fabric}\u2002{fabric?.Name}",
                        i => cutting.BySize[i] is not null
                    )
                ),
            ]
        )
        {
            Name = $"cutting-{cutting.Fabric}-{cutting.Use}",
            Title =
                cutting.Use == FabricUse.Binding
                    ? labels.Format("fabric-for-binding", cutting.Fabric, fabric?.Name)
                    : $"{cutting.Fabric} {fabric?.Name}",
        };
        var table = new SizeTable(context, labels["piece"], "")
        {
            Summary = labels.Format("summary-cutting", cutting.Fabric),
        };
        if (cutting.BySize.FirstOrDefault(list => list?.Panels is not null)?.Panels is { } kind)
        {
            table.Add(
                [
                    Cells.Head(Cells.Plain(context.Numbers.PanelName(kind.Kind))),
                    new TableCell(
                        Cells.Plain(
                            labels.Format(
                                "panel-each",
                                context.Numbers.Size(kind.Height, kind.Width)
                            )
                        )
                    ),
                ],
                i =>
                    cutting.BySize[i]?.Panels is { } panels ? Cells.Strong($"{panels.Count}") : null
            );
        }
        foreach (ImmutableArray<CutRow> together in TogetherInOrder(cutting))
        {
            Row(table, together, cutting, context);
        }
        table.Add(
            [Cells.Head(Cells.Plain(labels["left-over"])), new TableCell("")],
            i => LeftOver(cutting.BySize[i], context)
        );
        foreach (Block block in table.ToBlocks())
        {
            yield return block;
        }
    }

    /// <summary>So many units in a row are told by the first and the last.</summary>
    private const int ManyUnits = 3;

    /// <summary>
    /// Pieces that are cut alike: in each column how many, and below that the strips they are cut from.
    /// </summary>
    private static void Row(
        SizeTable table,
        ImmutableArray<CutRow> rows,
        CuttingTable cutting,
        SectionContext context
    )
    {
        Labels labels = context.Labels;
        string ids = CutNames.Joined([.. rows.Select(r => r.Id)]);
        List<StripRow>[] strips =
        [
            .. cutting.BySize.Select(list =>
                list?.Strips.Where(s => rows.Any(r => s.Pieces[0].Cuts.Contains(r.Id))).ToList()
                ?? []
            ),
        ];
        bool directional = context.Fabric(cutting.Fabric) is { Directional: true };
        string? size = Cells.Common(
            rows.SelectMany(r =>
                r.BySize.Select(c => c is null ? null : SizeOf(r, c, directional, context))
            )
        );
        bool whole = rows[0].WholeStrip;
        var about = new List<Block> { Cells.Plain(size ?? labels["size-differs"]) };
        for (int i = 0; i < rows.Length; )
        {
            // The same piece of many units in a row is told once.
            int end = i + 1;
            while (end < rows.Length && CutWords.IsSamePiece(rows[i], rows[end]))
            {
                end++;
            }
            bool many = end - i >= ManyUnits;
            string purpose = many
                ? CutWords.Purpose(rows[i], rows[end - 1], context)
                : CutWords.Purpose(rows[i], context);
            string? after = CutWords.After(rows[i], context);
            about.Add(Cells.Small(after is null ? purpose : $"{purpose}; {after}"));
            i = many ? end : i + 1;
        }
        bool Has(int i) => rows.Any(r => r.BySize[i] is not null);
        if (
            context.Only(Has) is { } only
            && only != context.Only(i => cutting.BySize[i] is not null)
        )
        {
            about.Add(Cells.Small(only));
        }
        table.Add(
            [Cells.Head(Cells.Strong(ids)), new TableCell(new Stack(about))],
            i =>
            {
                List<CutRow> here = [.. rows.Where(r => r.BySize[i] is not null)];
                if (here.Count == 0)
                {
                    return null;
                }
                var lines = new List<Block>
                {
                    Cells.Strong(
                        rows.Length == 1
                            ? $"{here[0].BySize[i]!.Count}"
                            : string.Join(", ", here.Select(r => $"{r.BySize[i]!.Count} {r.Id}"))
                    ),
                };
                if (size is null)
                {
                    lines.Add(
                        Cells.Plain(SizeOf(here[0], here[0].BySize[i]!, directional, context))
                    );
                }
                if (!whole)
                {
                    lines.AddRange(
                        strips[i].Select(s => StripLine(s, rows, cutting.BySize[i]!, context))
                    );
                    lines.AddRange(FromOthers(rows, cutting.BySize[i]!, labels));
                }
                return new Stack(lines);
            }
        );
    }

    /// <summary>"8 strips, each 10" or "1 strip: 6, then 4 A4".</summary>
    private static Text StripLine(
        StripRow strip,
        ImmutableArray<CutRow> rows,
        StripList list,
        SectionContext context
    )
    {
        Labels labels = context.Labels;
        StripPieces first = strip.Pieces[0];
        string count = labels.Count("strip-count", strip.Count);
        if (strip.Height > list.StripLength && strip.Panel is null)
        {
            // Longer than the fabric is wide: the pieces lie side by side along it.
            count = labels.Format(
                "length-of-fabric",
                labels.Count("length-count", strip.Count),
                context.Numbers.Measure(strip.Height)
            );
        }
        // A strip for squares is as high as they are, and goes without saying.
        else if (first.Length != first.Height || first.Height != strip.Height)
        {
            count = labels.Format("strips-high", count, context.Numbers.Measure(strip.Height));
        }
        if (strip.Beside is { } at)
        {
            count = labels.Format(
                "strips-beside",
                count,
                CutNames.Joined(list.Strips[at].Pieces[0].Cuts),
                context.Numbers.Measure(list.Strips[at].End)
            );
        }
        string pieces = string.Join(
            $", {labels["then"]} ",
            strip.Pieces.Select(
                (p, i) =>
                    i == 0 && p.Cuts.Length == rows.Length
                        ? $"{p.PerStrip}"
                        : $"{p.PerStrip}\u00a0{CutNames.Joined(p.Cuts)}"
            )
        );
        string line = labels.Format(
            strip.Count == 1 ? "one-strip-gives" : "each-strip-gives",
            count,
            pieces
        );
        // Strips that are cut alike may hold fewer than fit: that is meant, and no slip.
        bool more = strip.Count > 1 && strip.Pieces.Length == 1 && strip.End >= first.Length;
        return Cells.Small(
            more ? labels.Format("more-would-fit", line)
            : CuttingLegend.IsFull(strip, context) ? labels.Format("no-spare", line)
            : line
        );
    }

    /// <summary>"+ 12 from the B2 strip": pieces that come from what is left of strips begun for others.</summary>
    private static IEnumerable<Block> FromOthers(
        ImmutableArray<CutRow> rows,
        StripList list,
        Labels labels
    )
    {
        foreach (StripRow strip in list.Strips)
        {
            if (rows.Any(r => strip.Pieces[0].Cuts.Contains(r.Id)))
            {
                continue;
            }
            foreach (StripPieces pieces in strip.Pieces)
            {
                if (rows.Any(r => pieces.Cuts.Contains(r.Id)))
                {
                    string from = CutNames.Joined(strip.Pieces[0].Cuts);
                    yield return Cells.Small(
                        strip.Count == 1
                            ? labels.Format("from-strip", pieces.PerStrip, from)
                            : labels.Format("from-strips", pieces.PerStrip, strip.Count, from)
                    );
                }
            }
        }
    }

    // Worth keeping (common practice, no source): at least a strip of 2 in and 5 in long.
    private static readonly Length LeastHeight = Length.FromInches(2);
    private static readonly Length LeastLength = Length.FromInches(5);

    /// <summary>How many ends are told.</summary>
    private const int MostEnds = 3;

    /// <summary>The largest ends of strips that are worth keeping.</summary>
    private static Block? LeftOver(StripList? list, SectionContext context)
    {
        var ends = new List<(long Count, Length Height, Length Length)>();
        for (int i = 0; i < (list?.Strips.Length ?? 0); i++)
        {
            StripRow strip = list!.Strips[i];
            // What strips beside long pieces leave of the width there is too narrow to name.
            bool besides = list.Strips.Any(s => s.Beside == i);
            if (!besides && strip.Height >= LeastHeight && strip.End >= LeastLength)
            {
                ends.Add((strip.Count, strip.Height, strip.End));
            }
        }
        foreach (PanelRow panel in list?.Panels?.Layouts ?? [])
        {
            Length length = panel.Up ? list!.Panels!.Height : list!.Panels!.Width;
            if (panel.Left >= LeastHeight && length >= LeastLength)
            {
                ends.Add((panel.Count, panel.Left, length));
            }
        }
        return ends.Count == 0
            ? null
            : new Stack(
                ends.OrderByDescending(e => (e.Height * e.Length).SquareInches)
                    .Take(MostEnds)
                    .Select(e =>
                        Cells.Small(
                            $"{e.Count}\u00a0of {context.Numbers.Square(Length.Min(e.Height, e.Length), Length.Max(e.Height, e.Length))}"
                        )
                    )
            );
    }

    /// <summary>
    /// A piece that may be turned is told with its shorter side first, so that pieces cut alike are told alike.
    /// </summary>
    private static string SizeOf(CutRow row, CutCell cell, bool directional, SectionContext context)
    {
        NumberWords numbers = context.Numbers;
        return row.WholeStrip ? context.Labels.Format("strip-of", numbers.Measure(cell.Height))
            : directional ? numbers.Square(cell.Width, cell.Height)
            : numbers.Square(
                Length.Min(cell.Width, cell.Height),
                Length.Max(cell.Width, cell.Height)
            );
    }

    /// <summary>
    /// The rows of pieces, those that strips begin with first and in the order they are cut; pieces that any size cuts
    /// from the same strips as if they were one are one row.
    /// </summary>
    private static List<ImmutableArray<CutRow>> TogetherInOrder(CuttingTable cutting)
    {
        List<string> order = [];
        var partner = cutting.Rows.ToDictionary(r => r.Id, r => r.Id, StringComparer.Ordinal);
        foreach (StripList? list in cutting.BySize)
        {
            int at = 0;
            foreach (StripRow strip in list?.Strips ?? [])
            {
                foreach (StripPieces pieces in strip.Pieces)
                {
                    foreach (string other in pieces.Cuts)
                    {
                        Join(partner, pieces.Cuts[0], other);
                    }
                }
                string first = strip.Pieces[0].Cuts[0];
                int known = order.IndexOf(first);
                if (known >= 0)
                {
                    at = known + 1;
                    continue;
                }
                order.Insert(Math.Min(at, order.Count), first);
                at++;
            }
        }
        return
        [
            .. cutting
                .Rows.GroupBy(r => Root(partner, r.Id))
                .OrderBy(g =>
                    g.Select(r => order.IndexOf(r.Id))
                        .Where(i => i >= 0)
                        .DefaultIfEmpty(int.MaxValue)
                        .Min()
                )
                .Select(g => g.ToImmutableArray()),
        ];
    }

    private static void Join(Dictionary<string, string> partner, string a, string b) =>
        partner[Root(partner, b)] = Root(partner, a);

    private static string Root(Dictionary<string, string> partner, string id)
    {
        while (partner[id] != id)
        {
            id = partner[id];
        }
        return id;
    }
}
