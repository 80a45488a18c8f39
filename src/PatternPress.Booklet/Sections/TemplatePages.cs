using System.Collections.Immutable;
using PatternPress.Booklet.Figures;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Booklet.Sections;

/// <summary>Templates in true size, and a table of what is cut with each.</summary>
internal sealed class TemplatePages : Section
{
    public override string Name => "templates";

    public override bool HasSomethingToSay(PrintedTables tables) => !tables.Templates.IsEmpty;

    public override ImmutableArray<Block> Build(SectionContext context) =>
        HasSomethingToSay(context.Tables)
            ?
            [
                .. context.Fill(
                    Name,
                    null,
                    new Dictionary<string, ImmutableArray<Block>>
                    {
                        ["templates"] = Table(context),
                    },
                    Name
                ),
                .. TrueScalePages.Of(Shapes(context), "template-sheet", context),
            ]
            : [];

    private static ImmutableArray<Block> Table(SectionContext context)
    {
        Labels labels = context.Labels;
        var table = new SizeTable(context, labels["template"], labels["piece"])
        {
            Summary = labels["summary-templates"],
        };
        foreach (TemplateTable template in context.Tables.Templates)
        {
            for (int i = 0; i < template.Cuts.Length; i++)
            {
                int cut = i;
                table.Add(
                    [
                        Cells.Head(Cells.Strong(template.Name)),
                        new TableCell(
                            new Stack(
                                Cells.Plain(
                                    labels.Format(
                                        "template-piece",
                                        template.Cuts[cut],
                                        context.Fabric(FabricOf(template.Cuts[cut], context))?.Name
                                    )
                                ),
                                Cells.Small(PieceOf(template, labels))
                            )
                        ),
                    ],
                    size =>
                        template.BySize[size] is { } cell && cell.Counts[cut] > 0
                            ? Cells.Strong($"{cell.Counts[cut]}")
                            : null
                );
            }
        }
        return table.ToBlocks();
    }

    private static string PieceOf(TemplateTable template, Labels labels) =>
        template.Unit is { } unit
            ? labels.Format("for-unit-piece", template.Piece, labels.Format("unit-called", unit))
            : template.Piece;

    private static string FabricOf(string cut, SectionContext context) =>
        context.Tables.Cutting.FirstOrDefault(table => table.Rows.Any(row => row.Id == cut))?.Fabric
        ?? "";

    /// <summary>More fabrics or sizes than these are told by the table alone.</summary>
    private const int MostLines = 6,
        MostFabrics = 5;

    private static IEnumerable<TrueScaleShape> Shapes(SectionContext context)
    {
        Labels labels = context.Labels;
        foreach (TemplateTable template in context.Tables.Templates)
        {
            // Sizes with one shape share it.
            var groups = new List<List<int>>();
            for (int size = 0; size < template.BySize.Length; size++)
            {
                if (template.BySize[size] is not { } cell)
                {
                    continue;
                }
                List<int>? same = groups.Find(group =>
                    template.BySize[group[0]]!.Shape.Cut.Equals(cell.Shape.Cut)
                );
                if (same is null)
                {
                    groups.Add(same = []);
                }
                same.Add(size);
            }
            foreach (List<int> sizes in groups)
            {
                string piece = PieceOf(template, labels);
                var lines = new List<string> { piece };
                string[] counts = [.. sizes.Select(size => CountsOf(template, size, context))];
                if (sizes.Count <= MostLines && template.Cuts.Length <= MostFabrics)
                {
                    lines.AddRange(
                        sizes.Select(
                            (size, i) =>
                                context.Sizes.Length == 1
                                    ? labels.Format("template-cut", counts[i])
                                    : labels.Format(
                                        "template-cut-size",
                                        context.Sizes[size].Name,
                                        counts[i]
                                    )
                        )
                    );
                }
                else
                {
                    lines.Add(
                        labels.Format(
                            "template-sizes",
                            labels.List(sizes.Select(size => context.Sizes[size].Name))
                        )
                    );
                }
                string name =
                    groups.Count == 1
                        ? template.Name
                        : labels.Format(
                            "template-of-size",
                            template.Name,
                            string.Join(", ", sizes.Select(s => context.Sizes[s].Name))
                        );
                yield return context.Figures.Template(
                    name,
                    piece,
                    template.BySize[sizes[0]]!.Shape,
                    [.. lines]
                );
            }
        }
    }

    /// <summary>"24 A, 12 B".</summary>
    private static string CountsOf(TemplateTable template, int size, SectionContext context) =>
        string.Join(
            ", ",
            template
                .Cuts.Select((cut, i) => (Cut: cut, template.BySize[size]!.Counts[i]))
                .Where(c => c.Item2 > 0)
                .GroupBy(c => FabricOf(c.Cut, context))
                .Select(g => $"{g.Sum(c => c.Item2)} {g.Key}")
        );
}
