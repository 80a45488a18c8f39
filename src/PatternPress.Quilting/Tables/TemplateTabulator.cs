using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Settings;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Tables;

/// <summary>The templates of all pieces that are cut around one.</summary>
internal static class TemplateTabulator
{
    public static ImmutableArray<TemplateTable> Tabulate(
        ImmutableArray<UnitTable> units,
        ImmutableArray<PatchRow> patches,
        Making making
    )
    {
        var tables = ImmutableArray.CreateBuilder<TemplateTable>();
        foreach (UnitTable unit in units)
        {
            foreach (string piece in PiecesWithTemplates(unit))
            {
                ImmutableArray<string> cuts =
                [
                    .. unit
                        .Rows.SelectMany(row => row.BySize)
                        .SelectMany(cell => cell?.Pieces ?? [])
                        .Where(p => p.Name == piece)
                        .Select(p => p.Cut)
                        .Distinct(),
                ];
                tables.Add(
                    new TemplateTable(
                        $"T{tables.Count + 1}",
                        unit.Number,
                        piece,
                        cuts,
                        [.. making.Sizes.Select(size => CellOf(size, unit.Number, piece, cuts))]
                    )
                );
            }
        }
        foreach (
            var alike in patches
                .Where(row => row.BySize.Any(cell => cell is not null))
                .GroupBy(row => (row.Kind, row.Reversed))
        )
        {
            tables.Add(
                new TemplateTable(
                    $"T{tables.Count + 1}",
                    null,
                    PurposeText.Word(alike.Key.Kind, alike.Key.Reversed),
                    [.. alike.Select(row => row.BySize.First(cell => cell is not null)!.Cut)],
                    [
                        .. making.Sizes.Select(
                            (size, i) =>
                                alike
                                    .Select(row => row.BySize[i])
                                    .FirstOrDefault(c => c is not null)
                                    is { } first
                                    ? new TemplateCell(
                                        SixtyDegrees.TemplateOf(
                                            alike.Key.Kind,
                                            alike.Key.Reversed,
                                            first.Finished,
                                            size.Quilt.House.Seam
                                        ),
                                        [.. alike.Select(row => row.BySize[i]?.Count ?? 0)]
                                    )
                                    : null
                        ),
                    ]
                )
            );
        }
        return tables.ToImmutable();
    }

    private static IEnumerable<string> PiecesWithTemplates(UnitTable unit) =>
        unit
            .Rows.SelectMany(row => row.BySize)
            .SelectMany(cell => cell?.Pieces ?? [])
            .SelectWhere(p => p.After == PieceCut.AroundTemplate, p => p.Name)
            .Distinct();

    private static TemplateCell? CellOf(
        SizeMaking size,
        int unit,
        string piece,
        ImmutableArray<string> cuts
    )
    {
        PieceTemplate? shape = size
            .Units.Where(batch => batch.Shape.Number == unit)
            .SelectMany(batch => batch.Recipe.Pieces)
            .FirstOrDefault(p => p.Name == piece)
            ?.Template;
        return shape is null
            ? null
            : new TemplateCell(
                shape,
                [.. cuts.Select(id => size.Cuts.FirstOrDefault(cut => cut.Id == id)?.Count ?? 0)]
            );
    }
}
