using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Cutting;
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
                null,
                new Dictionary<string, ImmutableArray<Block>>
                {
                    ["tables"] = [.. context.Tables.Cutting.SelectMany(c => Fabric(c, context))],
                },
                Name
            );

    private static IEnumerable<Block> Fabric(CuttingTable cutting, SectionContext context)
    {
        FabricLabel? fabric = context.Fabric(cutting.Fabric);
        yield return new Heading(
            3,
            [
                context.Figures.Swatch(cutting.Fabric),
                new Run("\u2002"),
                .. FractionText.Parse(
                    cutting.Use == FabricUse.Binding
                        ? context.Labels.Format("fabric-for-binding", cutting.Fabric, fabric?.Name)
                        : $"{cutting.Fabric}\u2002{fabric?.Name}"
                ),
            ]
        )
        {
            Name = $"cutting-{cutting.Fabric}-{cutting.Use}",
            Title = $"{cutting.Fabric} {fabric?.Name}",
        };
        var table = new SizeTable(context, "", "")
        {
            Summary = context.Labels.Format("summary-cutting", cutting.Fabric),
        };
        Strips(table, cutting, context);
        Pieces(table, cutting, context);
        foreach (Block block in table.ToBlocks())
        {
            yield return block;
        }
    }

    /// <summary>A row for each kind of strip, told by the piece it begins with, in the order they are cut.</summary>
    private static void Strips(SizeTable table, CuttingTable cutting, SectionContext context)
    {
        Labels labels = context.Labels;
        table.Group(labels["cut-strips"]);
        foreach (string first in FirstPiecesInOrder(cutting))
        {
            List<StripRow>[] bySize =
            [
                .. cutting.BySize.Select(list =>
                    list?.Strips.Where(s => Ids(s.Pieces[0]) == first).ToList() ?? []
                ),
            ];
            string? height = Cells.Common(
                bySize.SelectMany(s => s).Select(s => context.Numbers.Measure(s.Height))
            );
            bool whole = cutting.Rows.Any(r =>
                r.WholeStrip && bySize.SelectMany(s => s).Any(s => s.Pieces[0].Cuts.Contains(r.Id))
            );
            table.Add(
                [
                    Cells.Head(Cells.Strong(first)),
                    new TableCell(
                        Cells.Lines(
                            height is null ? labels["strips"] : labels.Format("strips-of", height),
                            whole ? labels["kept-whole"] : null
                        )
                    ),
                ],
                i => StripCell(bySize[i], height is null, whole, context)
            );
        }
    }

    private static Block? StripCell(
        List<StripRow> strips,
        bool showHeight,
        bool whole,
        SectionContext context
    )
    {
        if (strips.Count == 0)
        {
            return null;
        }
        Labels labels = context.Labels;
        var lines = new List<Block>();
        foreach (StripRow strip in strips)
        {
            string count = labels.Count("strip-count", strip.Count);
            lines.Add(
                Cells.Strong(
                    showHeight
                        ? labels.Format("strips-high", count, context.Numbers.Measure(strip.Height))
                        : count
                )
            );
            if (!whole)
            {
                string pieces = string.Join(
                    $", {labels["then"]} ",
                    strip.Pieces.Select(p => $"{p.PerStrip}\u00a0{Ids(p)}")
                );
                lines.Add(
                    Cells.Small(strip.Count == 1 ? pieces : labels.Format("per-strip", pieces))
                );
            }
        }
        return new Stack(lines);
    }

    private static void Pieces(SizeTable table, CuttingTable cutting, SectionContext context)
    {
        Labels labels = context.Labels;
        table.Group(labels["pieces"]);
        foreach (CutRow row in cutting.Rows)
        {
            string? size = Cells.Common(
                row.BySize.Select(c => c is null ? null : SizeOf(row, c, context))
            );
            string purpose = CutWords.Purpose(row, context);
            string? after = CutWords.After(row.After, labels);
            table.Add(
                [
                    Cells.Head(Cells.Strong(row.Id)),
                    new TableCell(
                        new Stack([
                            Cells.Plain(size ?? labels["size-differs"]),
                            Cells.Small(after is null ? purpose : $"{purpose}; {after}"),
                        ])
                    ),
                ],
                i =>
                    row.BySize[i] is not { } cell ? null
                    : size is not null ? Cells.Strong($"{cell.Count}")
                    : Cells.Lines($"{cell.Count}", SizeOf(row, cell, context))
            );
        }
    }

    private static string SizeOf(CutRow row, CutCell cell, SectionContext context) =>
        row.WholeStrip ? context.Labels.Format("strip-of", context.Numbers.Measure(cell.Height))
        : cell.Width == cell.Height
            ? context.Labels.Format("square-of", context.Numbers.Measure(cell.Width))
        : context.Numbers.Size(cell.Width, cell.Height);

    /// <summary>What strips begin with, of all sizes, in the order in which it first comes in any size.</summary>
    private static List<string> FirstPiecesInOrder(CuttingTable cutting)
    {
        List<string> order = [];
        foreach (StripList? list in cutting.BySize)
        {
            int at = 0;
            foreach (StripRow strip in list?.Strips ?? [])
            {
                string first = Ids(strip.Pieces[0]);
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
        return order;
    }

    /// <summary>"A2/A3": pieces that are cut alike, so that either can come from the strip.</summary>
    private static string Ids(StripPieces pieces) => string.Join("/", pieces.Cuts);
}
