using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Tables;

/// <summary>The units to sew.</summary>
internal static class UnitTabulator
{
    public static ImmutableArray<UnitTable> Tabulate(Making making)
    {
        var ids = making
            .Sizes.SelectMany(size => size.Cuts)
            .Where(cut => cut.Purpose is CutPurpose.UnitPiece)
            .DistinctBy(cut => cut.Id)
            .ToDictionary(cut => (CutPurpose.UnitPiece)cut.Purpose, cut => cut.Id);
        return [.. making.Shapes.Select(shape => TableOf(making, shape, ids))];
    }

    private static UnitTable TableOf(
        Making making,
        UnitShape shape,
        Dictionary<CutPurpose.UnitPiece, string> ids
    )
    {
        UnitBatch example = making
            .Sizes.SelectMany(size => size.Units)
            .First(batch => batch.Shape.Number == shape.Number);
        return new UnitTable(
            shape.Number,
            shape.Kind.Keyword,
            shape.Kind.Name,
            shape.Technique.Keyword,
            shape.Technique.Name,
            example.Form,
            example.Recipe.Steps,
            [
                .. shape.Classes.Select(unit => new UnitRow(
                    unit.Label,
                    unit.Fabrics,
                    unit.Uses,
                    [
                        .. making.Sizes.Select(size =>
                            size.Units.FirstOrDefault(batch => batch.Class.Label == unit.Label)
                                is { } batch
                                ? CellOf(batch, ids)
                                : null
                        ),
                    ]
                )),
            ]
        );
    }

    private static UnitCell CellOf(UnitBatch batch, Dictionary<CutPurpose.UnitPiece, string> ids)
    {
        Recipe recipe = batch.Recipe;
        return new UnitCell(
            batch.Form.Variant,
            batch.Form.Width,
            batch.Form.Height,
            recipe.UnfinishedWidth,
            recipe.UnfinishedHeight,
            recipe.Trim,
            batch.Needed,
            recipe.Yield,
            batch.Batches,
            batch.Made,
            [
                .. recipe.Pieces.Select(piece => new UnitPiece(
                    ids[UnitPieces.PurposeOf(batch.Class, recipe, piece)],
                    piece.Name,
                    piece.Role,
                    piece.InStrip > 0 ? piece.Slices : piece.Count,
                    piece.Width,
                    piece.Height,
                    piece.Cut,
                    piece.WholeStrip
                )
                {
                    InStrip = piece.InStrip,
                }),
            ],
            [
                .. recipe.StripSets.Select(set => new StripSetRow(
                    set.Roles,
                    set.SegmentsPerUnit,
                    set.SegmentsPerSet,
                    set.SetsFor(batch.Needed),
                    set.Segment,
                    batch.Needed * set.SegmentsPerUnit
                )),
            ],
            [
                .. recipe
                    .Measures.Sorted((a, b) => string.CompareOrdinal(a.Key, b.Key))
                    .Select(m => new NamedLength(m.Key, m.Value)),
            ],
            recipe.Leftovers
        );
    }
}
