using System.Collections.Immutable;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Booklet.Sections;

/// <summary>The patches of a one-patch quilt: how they are cut from their strips, and how many there are.</summary>
internal sealed class Patches : Section
{
    public override string Name => "patches";

    public override ImmutableArray<Block> Build(SectionContext context) =>
        context.Tables.Patches.IsEmpty
            ? []
            : context.Fill(
                Name,
                WordData.Empty.With("height", context.Sized(size => Finished(size, context))),
                new Dictionary<string, ImmutableArray<Block>>
                {
                    ["table"] = Table(context),
                    ["whole"] = Sketch(false, context),
                    ["end"] = Sketch(true, context),
                },
                Name
            );

    private static string? Finished(int size, SectionContext context) =>
        context.Tables.Patches.Select(row => row.BySize[size]).FirstOrDefault(c => c is not null)
            is { } cell
            ? context.Numbers.Measure(cell.Finished)
            : null;

    private static ImmutableArray<Block> Table(SectionContext context)
    {
        Labels labels = context.Labels;
        var table = new SizeTable(context, labels["piece"], "")
        {
            Summary = labels["summary-patches"],
        };
        foreach (PatchRow row in context.Tables.Patches)
        {
            string id = row.BySize.First(c => c is not null)!.Cut;
            table.Add(
                [
                    Cells.Head(
                        Cells.Lines(
                            CutWords.PatchName(row.Kind, row.Reversed, labels),
                            labels.Format("template-called", CutWords.TemplateOf(id, context))
                        )
                    ),
                    new TableCell(
                        Cells.LetterAndName(row.Fabric, context.Fabric(row.Fabric)?.Name ?? "")
                    ),
                ],
                i =>
                    row.BySize[i] is { } cell
                        ? Cells.Lines(
                            $"{cell.Count}",
                            cell.PerStrip == 1
                                ? labels.Format("patches-from-rectangles", cell.Cut)
                                : labels.Format("patches-from-strips", cell.Cut, cell.PerStrip)
                        )
                        : null
            );
        }
        return table.ToBlocks();
    }

    private static ImmutableArray<Block> Sketch(bool end, SectionContext context)
    {
        foreach (PatchRow row in context.Tables.Patches)
        {
            for (int i = 0; i < row.BySize.Length; i++)
            {
                if (row.BySize[i] is { } cell && cell.PerStrip == 1 == end)
                {
                    return
                    [
                        context.Figures.PatchCutting(
                            row,
                            i,
                            context.Grown(end ? 170.Pt : 330.Pt),
                            context.Grown(72.Pt)
                        ),
                    ];
                }
            }
        }
        return [];
    }
}
