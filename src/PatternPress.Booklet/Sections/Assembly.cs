using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Styles;
using Block = PatternPress.Typesetting.Blocks.Block;

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
                ),
            new Dictionary<string, ImmutableArray<Block>>
            {
                ["sashing"] = Sashing(context),
                ["check"] = Check(context),
                ["charts"] = [.. context.Sizes.SelectMany((_, i) => Chart(i, context))],
            },
            Name
        );

    private static bool Turned(PlacementChart chart) =>
        chart.Rows.Any(row => row.Any(cell => cell.Turn.Quarters != 0));

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

    /// <summary>What the quilt measures before borders.</summary>
    private static ImmutableArray<Block> Check(SectionContext context)
    {
        var table = new SizeTable(context, "") { Summary = context.Labels["summary-center"] };
        table.Add(
            context.Labels["center-unfinished"],
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

    private static IEnumerable<Block> Chart(int size, SectionContext context)
    {
        SizeColumn column = context.Sizes[size];
        Figure? figure = context.Figures.Rows(
            size,
            context.TextWidth,
            context.TextHeight.Scale(0.5) - 75.Pt
        );
        if (figure is null)
        {
            yield break;
        }
        yield return new KeepTogether(
            new Stack([
                new Heading(3, context.Labels.Format("size-heading", column.Name))
                {
                    Name = $"assembly-{column.Key}",
                },
                .. context.Note($"size-{column.Key}"),
                new Text(
                    context.Labels.Format(
                        "layout-line",
                        context.Labels.Count("row-count", column.Down),
                        context.Labels.Count("block-number", column.Across),
                        context.Labels.List(Counts(size, context))
                    )
                ),
                figure with
                {
                    Alignment = Alignment.Centre,
                    MinWidth = figure.Drawing.NaturalWidth.Scale(0.75),
                    SpaceAfter = 10.Pt,
                },
            ])
        );
    }

    private static IEnumerable<string> Counts(int size, SectionContext context) =>
        context
            .Tables.Blocks.Where(b => b.BySize[size] is not null)
            .Select(b => $"{b.BySize[size]!.Count} {b.Coloring}");
}
