using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Techniques.Kinds;

namespace PatternPress.Quilting.Tables;

/// <summary>The shapes that are fused onto a ground.</summary>
internal static class AppliqueTabulator
{
    public static ImmutableArray<AppliqueTable> Tabulate(Making making)
    {
        var tables = ImmutableArray.CreateBuilder<AppliqueTable>();
        foreach (UnitShape shape in making.Shapes.Where(s => s.Kind is AppliqueBlock))
        {
            tables.Add(
                new AppliqueTable(
                    $"S{tables.Count + 1}",
                    shape.Number,
                    [.. making.Sizes.Select(size => CellOf(size, shape.Number))]
                )
            );
        }
        return tables.ToImmutable();
    }

    private static AppliqueCell? CellOf(SizeMaking size, int unit)
    {
        UnitBatch[] batches = [.. size.Units.Where(batch => batch.Shape.Number == unit)];
        return batches.Length == 0
            ? null
            : new AppliqueCell(
                batches.Sum(batch => batch.Made),
                [
                    .. batches[0]
                        .Form.Overlays.Select(overlay => new FoundationArea(
                            overlay.Shape,
                            overlay.Role
                        )),
                ]
            );
    }
}
