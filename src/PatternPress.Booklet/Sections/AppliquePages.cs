using System.Collections.Immutable;
using PatternPress.Booklet.Figures;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Booklet.Sections;

/// <summary>Appliqué shapes in true size, mirrored for tracing, and where they lie.</summary>
internal sealed class AppliquePages : Section
{
    public override string Name => "appliques";

    public override bool HasSomethingToSay(PrintedTables tables) => !tables.Appliques.IsEmpty;

    public override ImmutableArray<Block> Build(SectionContext context) =>
        HasSomethingToSay(context.Tables)
            ?
            [
                .. context.Fill(
                    Name,
                    null,
                    new Dictionary<string, ImmutableArray<Block>>
                    {
                        ["shapes"] = Table(context),
                        ["placement"] = Placement(context),
                    },
                    Name
                ),
                .. TrueScalePages.Of(Shapes(context), "applique-sheet", context),
            ]
            : [];

    private static ImmutableArray<Block> Table(SectionContext context)
    {
        Labels labels = context.Labels;
        var table = new SizeTable(context, labels["shape"], labels["unit"])
        {
            Summary = labels["summary-appliques"],
        };
        foreach (AppliqueTable applique in context.Tables.Appliques)
        {
            int shapes = applique.BySize.First(c => c is not null)!.Shapes.Length;
            table.Add(
                [
                    Cells.Head(
                        Cells.Strong(
                            shapes == 1
                                ? $"{applique.Name}.1"
                                : labels.Format(
                                    "range",
                                    $"{applique.Name}.1",
                                    $"{applique.Name}.{shapes}"
                                )
                        )
                    ),
                    new TableCell(Cells.Plain(labels.Format("unit-called", applique.Unit))),
                ],
                size => applique.BySize[size] is { } cell ? Cells.Strong($"{cell.Copies}") : null
            );
        }
        return table.ToBlocks();
    }

    /// <summary>Each unit with its shapes laid down.</summary>
    private static ImmutableArray<Block> Placement(SectionContext context) =>
        [
            .. context.Tables.Appliques.Select(applique =>
            {
                UnitTable unit = context.Tables.Units.First(u => u.Number == applique.Unit);
                return context.Figures.Unit(unit, unit.Rows[0], context.Grown(150.Pt)) with
                {
                    Caption = new Text(
                        $"{applique.Name}, {context.Labels.Format("unit-called", applique.Unit)}",
                        "caption"
                    ),
                    SpaceAfter = 8.Pt,
                };
            }),
        ];

    private static IEnumerable<TrueScaleShape> Shapes(SectionContext context)
    {
        Labels labels = context.Labels;
        foreach (AppliqueTable applique in context.Tables.Appliques)
        {
            UnitTable unit = context.Tables.Units.First(u => u.Number == applique.Unit);
            var drawn = new List<AppliqueCell>();
            for (int i = 0; i < applique.BySize.Length; i++)
            {
                if (
                    applique.BySize[i] is not { } cell
                    || drawn.Exists(d =>
                        d.Shapes.Select(s => s.Shape)
                            .SequenceEqual(cell.Shapes.Select(s => s.Shape))
                    )
                )
                {
                    continue;
                }
                drawn.Add(cell);
                // Sizes that draw their shapes alike share them.
                string[] sizes =
                [
                    .. context
                        .Sizes.Where(
                            (_, other) =>
                                applique.BySize[other] is { } same
                                && same.Shapes.Select(s => s.Shape)
                                    .SequenceEqual(cell.Shapes.Select(s => s.Shape))
                        )
                        .Select(s => s.Name),
                ];
                for (int n = 0; n < cell.Shapes.Length; n++)
                {
                    string[] letters =
                    [
                        .. unit.Rows.Select(row => row.Fabrics[cell.Shapes[n].Role]).Distinct(),
                    ];
                    const int most = 3;
                    yield return context.Figures.Applique(
                        $"{applique.Name}.{n + 1}",
                        labels.Format("unit-called", applique.Unit),
                        cell.Shapes[n].Shape,
                        letters.Length <= most
                            ? string.Join("/", letters)
                            : labels.Format("fabric-number", cell.Shapes[n].Role + 1),
                        sizes.Length == context.Sizes.Length ? "" : string.Join(", ", sizes)
                    );
                }
            }
        }
    }
}
