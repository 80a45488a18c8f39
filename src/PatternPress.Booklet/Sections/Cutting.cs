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
                CuttingLegend.Of(context),
                new Dictionary<string, ImmutableArray<Block>>
                {
                    ["example"] = Example(context),
                    ["tables"] =
                    [
                        .. context.Tables.Cutting.Select(c => new KeepTogether(
                            new Stack(Fabric(c, context))
                        )),
                    ],
                },
                Name
            );

    /// <summary>One fabric of one size drawn strip by strip, to show how the tables are read.</summary>
    private static ImmutableArray<Block> Example(SectionContext context)
    {
        // The richest one: strips that give more than one kind of piece, but not many strips.
        (CuttingTable Cutting, int Size)? best = null;
        // Less than that shows nothing that the words do not say.
        int most = 2;
        foreach (CuttingTable cutting in context.Tables.Cutting)
        {
            for (int i = 0; i < context.Sizes.Length; i++)
            {
                ImmutableArray<StripRow> strips = cutting.BySize[i]?.Strips ?? [];
                int rich = strips.Sum(s => s.Pieces.Length) - (strips.Length / 2);
                if (strips.Length is > 0 and <= 4 && rich > most)
                {
                    (best, most) = ((cutting, i), rich);
                }
            }
        }
        if (
            best is not { } shown
            || context.Figures.Cutting(
                shown.Cutting,
                shown.Size,
                context.TextWidth.Scale(0.8),
                120.Pt
            )
                is not { } figure
        )
        {
            return [];
        }
        return
        [
            figure with
            {
                Caption = new Text(
                    context.Labels.Format(
                        "cutting-example",
                        shown.Cutting.Fabric,
                        context.Sizes[shown.Size].Name
                    ),
                    "caption"
                ),
                SpaceBefore = 2.Pt,
                SpaceAfter = 8.Pt,
            },
        ];
    }

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
                    cutting.Use == FabricUse.Binding
                        ? labels.Format("fabric-for-binding", cutting.Fabric, fabric?.Name)
                        : $"{cutting.Fabric}\u2002{fabric?.Name}"
                ),
            ]
        )
        {
            Name = $"cutting-{cutting.Fabric}-{cutting.Use}",
            Title = $"{cutting.Fabric} {fabric?.Name}",
        };
        var table = new SizeTable(context, labels["piece"], "")
        {
            Summary = labels.Format("summary-cutting", cutting.Fabric),
        };
        foreach (ImmutableArray<CutRow> together in TogetherInOrder(cutting))
        {
            Row(table, together, cutting, context);
        }
        foreach (Block block in table.ToBlocks())
        {
            yield return block;
        }
    }

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
        string ids = string.Join("/", rows.Select(r => r.Id));
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
        foreach (CutRow row in rows)
        {
            string purpose = CutWords.Purpose(row, context);
            string? after = CutWords.After(row.After, labels);
            about.Add(Cells.Small(after is null ? purpose : $"{purpose}; {after}"));
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
                    lines.AddRange(strips[i].Select(s => StripLine(s, rows, context)));
                    if (strips[i].Count == 0)
                    {
                        lines.Add(Cells.Small(labels["from-ends"]));
                    }
                }
                return new Stack(lines);
            }
        );
    }

    /// <summary>"8 strips, each 10" or "1 strip: 6, then 4 A4".</summary>
    private static Text StripLine(
        StripRow strip,
        ImmutableArray<CutRow> rows,
        SectionContext context
    )
    {
        Labels labels = context.Labels;
        string count = labels.Count("strip-count", strip.Count);
        // A strip for squares is as high as they are, and goes without saying.
        StripPieces first = strip.Pieces[0];
        if (first.Length != first.Height || first.Height != strip.Height)
        {
            count = labels.Format("strips-high", count, context.Numbers.Measure(strip.Height));
        }
        string pieces = string.Join(
            $", {labels["then"]} ",
            strip.Pieces.Select(
                (p, i) =>
                    i == 0 && p.Cuts.Length == rows.Length
                        ? $"{p.PerStrip}"
                        : $"{p.PerStrip}\u00a0{string.Join("/", p.Cuts)}"
            )
        );
        return Cells.Small(
            labels.Format(strip.Count == 1 ? "one-strip-gives" : "each-strip-gives", count, pieces)
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
