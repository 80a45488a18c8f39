using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Tables;

/// <summary>The blocks to make and where they go.</summary>
internal static class BlockTabulator
{
    public static ImmutableArray<BlockRow> Tabulate(Making making) =>
        [.. making.Blocks.Select(block => RowOf(making, block))];

    public static PlacementChart ChartOf(SizeMaking size)
    {
        Quilt quilt = size.Quilt;
        var numbers = PartSorting
            .Count(quilt)
            .ToDictionary(b => (b.Block.Key, b.Block.Width, b.Block.Height), b => b.Number);
        ImmutableArray<SashRun> runs = [.. SashingCuts.Runs(quilt)];
        // Sections say themselves where strips lie.
        SashingDesign? sashing =
            quilt.Sashes.IsEmpty || quilt.Order is not null ? null : quilt.Size.Quilt.Sashing;
        return new PlacementChart(
            size.Key,
            quilt.Size.Quilt.FieldSetting.Value,
            quilt.Order is not null
                ? []
                :
                [
                    .. Enumerable
                        .Range(0, quilt.Lines)
                        .Select(line =>
                            PatchesOf(quilt, line) is { IsEmpty: false } patches
                                ? patches
                                : quilt
                                    .Places.Where(place => place.Row == line)
                                    .Sorted((a, b) => a.Column.CompareTo(b.Column))
                                    .Select(CellOf)
                                    .ToImmutableArray()
                        ),
                ],
            sashing is null
                ? null
                : new SashingLayout(
                    sashing.Around || quilt.OnPoint,
                    sashing.Cornerstones is not null
                ),
            [
                .. QuiltSection
                    .Of(quilt)
                    .Select(section => new SectionRow(
                        section.Number,
                        section.Count,
                        section.Join,
                        [.. section.Parts.Select(part => PartOf(part))],
                        section.Place.Width,
                        section.Place.Height,
                        quilt.House.Unfinished(section.Place.Width),
                        quilt.House.Unfinished(section.Place.Height)
                    )),
            ]
        );

        SectionPart PartOf(QuiltSectionPart part)
        {
            if (part.Section > 0)
            {
                return new SectionPart(null, part.Section, null);
            }
            if (part.Piece.Kind == LayoutPartKind.Block)
            {
                return new SectionPart(CellOf(quilt.Places[part.Piece.Index]), 0, null);
            }
            Sash sash = quilt.Sashes[part.Piece.Index];
            SashRun run = runs.First(r =>
                r.Kind == sash.Kind
                && r.Fabric == sash.Fabric
                && r.Width == sash.Place.Width
                && r.Height == sash.Place.Height
            );
            return new SectionPart(null, 0, new SectionStrip(run.Kind, run.Fabric, run.Number));
        }

        PlacementCell CellOf(BlockPlace place) =>
            new(
                place.Block.Key,
                numbers[(place.Block.Key, place.Block.Width, place.Block.Height)],
                place.Turn
            );
    }

    // The places of a one-patch quilt hold plain colorings that are no blocks.
    private static ImmutableArray<PlacementCell> PatchesOf(Quilt quilt, int line) =>
        [
            .. quilt
                .Pieces.Where(piece => piece.IsPatch && piece.Row == line)
                .Sorted((a, b) => a.Column.CompareTo(b.Column))
                .Select(piece => new PlacementCell(piece.Coloring, 0, Geometry.Turn.None)),
        ];

    private static BlockRow RowOf(Making making, BlockMakeup block)
    {
        BlockDesign? design = block.Block is { } key ? making.Pattern.Block(key) : null;
        return new BlockRow(
            block.Coloring,
            block.Number,
            block.Block,
            design?.Name ?? "",
            design?.Columns ?? [],
            design?.Rows ?? [],
            block.Parts,
            [.. making.Sizes.Select(size => CellOf(size.Quilt, block))],
            [
                .. (design?.Inner ?? []).Select(inner => new InnerBlockRow(
                    inner.Key,
                    inner.Name,
                    inner.Column,
                    inner.Row,
                    inner.Columns,
                    inner.Rows,
                    [.. making.Sizes.Select(size => InnerCellOf(size.Quilt, block, design!, inner))]
                )),
            ]
        );
    }

    private static InnerBlockCell? InnerCellOf(
        Quilt quilt,
        BlockMakeup block,
        BlockDesign design,
        InnerBlock inner
    )
    {
        if (CellOf(quilt, block) is not { } cell)
        {
            return null;
        }
        return new InnerBlockCell(
            quilt.House.Unfinished(
                cell.FinishedWidth * Share(design.Columns, inner.Column, inner.Columns)
            ),
            quilt.House.Unfinished(cell.FinishedHeight * Share(design.Rows, inner.Row, inner.Rows))
        );

        static Rational Share(ImmutableArray<Rational> shares, int from, int count)
        {
            Rational some = Rational.Zero,
                all = Rational.Zero;
            for (int i = 0; i < shares.Length; i++)
            {
                all += shares[i];
                some += i >= from && i < from + count ? shares[i] : Rational.Zero;
            }
            return some / all;
        }
    }

    private static BlockCell? CellOf(Quilt quilt, BlockMakeup block)
    {
        foreach ((ColoredBlock sized, int number, long count) in PartSorting.Count(quilt))
        {
            if (sized.Key == block.Coloring && number == block.Number)
            {
                return new BlockCell(
                    count,
                    sized.Width,
                    sized.Height,
                    quilt.House.Unfinished(sized.Width),
                    quilt.House.Unfinished(sized.Height)
                );
            }
        }
        return null;
    }
}
