using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Techniques.Kinds;

namespace PatternPress.Quilting.Tables;

/// <summary>The sections that are sewn on paper.</summary>
internal static class FoundationTabulator
{
    public static ImmutableArray<FoundationTable> Tabulate(Making making)
    {
        var tables = ImmutableArray.CreateBuilder<FoundationTable>();
        foreach (UnitShape shape in making.Shapes.Where(s => s.Kind is FoundationSection))
        {
            tables.Add(
                new FoundationTable(
                    $"F{tables.Count + 1}",
                    shape.Number,
                    [.. making.Sizes.Select(size => CellOf(size, shape.Number))]
                )
            );
        }
        return tables.ToImmutable();
    }

    private static FoundationCell? CellOf(SizeMaking size, int unit)
    {
        UnitBatch[] batches = [.. size.Units.Where(batch => batch.Shape.Number == unit)];
        return batches.Length == 0
            ? null
            : new FoundationCell(
                batches.Sum(batch => batch.Made),
                [
                    .. batches[0]
                        .Form.Patches.Select(patch => new FoundationArea(patch.Shape, patch.Role)),
                ]
            );
    }
}
