using System.Collections.Immutable;
using PatternPress.Booklet.Figures;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Booklet.Sections;

/// <summary>Paper foundations in true size, mirrored, and how many of each to print.</summary>
internal sealed class FoundationPages : Section
{
    public override string Name => "foundations";

    public override bool HasSomethingToSay(PrintedTables tables) => !tables.Foundations.IsEmpty;

    public override ImmutableArray<Block> Build(SectionContext context) =>
        HasSomethingToSay(context.Tables)
            ?
            [
                .. context.Fill(
                    Name,
                    null,
                    new Dictionary<string, ImmutableArray<Block>>
                    {
                        ["foundations"] = Table(context),
                    },
                    Name
                ),
                .. TrueScalePages.Of(Shapes(context), "foundation-sheet", context),
            ]
            : [];

    private static ImmutableArray<Block> Table(SectionContext context)
    {
        Labels labels = context.Labels;
        var table = new SizeTable(context, labels["foundation"], labels["unit"])
        {
            Summary = labels["summary-foundations"],
        };
        foreach (FoundationTable foundation in context.Tables.Foundations)
        {
            table.Add(
                [
                    Cells.Head(Cells.Strong(foundation.Name)),
                    new TableCell(Cells.Plain(labels.Format("unit-called", foundation.Unit))),
                ],
                size => foundation.BySize[size] is { } cell ? Cells.Strong($"{cell.Copies}") : null
            );
        }
        return table.ToBlocks();
    }

    private static IEnumerable<TrueScaleShape> Shapes(SectionContext context)
    {
        Labels labels = context.Labels;
        foreach (FoundationTable foundation in context.Tables.Foundations)
        {
            UnitTable unit = context.Tables.Units.First(u => u.Number == foundation.Unit);
            var drawn = new List<(int Size, string Sizes)>();
            for (int i = 0; i < foundation.BySize.Length; i++)
            {
                if (foundation.BySize[i] is not { } cell)
                {
                    continue;
                }
                int same = drawn.FindIndex(d =>
                    foundation.BySize[d.Size]!
                        .Areas.Select(a => a.Shape)
                        .SequenceEqual(cell.Areas.Select(a => a.Shape))
                );
                if (same < 0)
                {
                    drawn.Add((i, context.Sizes[i].Name));
                }
                else
                {
                    drawn[same] = (
                        drawn[same].Size,
                        $"{drawn[same].Sizes}, {context.Sizes[i].Name}"
                    );
                }
            }
            foreach ((int size, string sizes) in drawn)
            {
                UnitCell cell = unit.Rows.Select(r => r.BySize[size]).First(c => c is not null)!;
                string told = labels.Format("unit-called", foundation.Unit);
                yield return context.Figures.Foundation(
                    foundation.Name,
                    told,
                    cell,
                    context.Sizes[size].Seam,
                    foundation.BySize[size]!.Areas,
                    role => Letter(unit, role, labels),
                    drawn.Count == 1 ? told : $"{told}, {sizes}"
                );
            }
        }
    }

    // Where the unit comes in several fabrics, the letters of all of them; of more, the number the steps call them by.
    private static string Letter(UnitTable unit, int role, Labels labels)
    {
        string[] keys = [.. unit.Rows.Select(row => row.Fabrics[role]).Distinct()];
        const int most = 2;
        return keys.Length <= most
            ? string.Join("/", keys)
            : labels.Format("fabric-number", role + 1);
    }
}
