using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
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
        SashingDesign? sashing = quilt.Sashes.IsEmpty ? null : quilt.Size.Quilt.Sashing;
        return new PlacementChart(
            size.Key,
            quilt.Size.Quilt.Setting.Value,
            [
                .. Enumerable
                    .Range(0, quilt.Lines)
                    .Select(line =>
                        quilt
                            .Places.Where(place => place.Row == line)
                            .OrderBy(place => place.Column)
                            .Select(place => new PlacementCell(
                                place.Block.Key,
                                numbers[(place.Block.Key, place.Block.Width, place.Block.Height)],
                                place.Turn
                            ))
                            .ToImmutableArray()
                    ),
            ],
            sashing is null
                ? null
                : new SashingLayout(
                    sashing.Around || quilt.OnPoint,
                    sashing.Cornerstones is not null
                )
        );
    }

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
            [.. making.Sizes.Select(size => CellOf(size.Quilt, block))]
        );
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
