using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Rules;
using PatternPress.Source;

namespace PatternPress.Quilting.Settings;

/// <summary>Blocks that are all of one size, one in each place.</summary>
internal static class EqualBlocks
{
    /// <summary>The block of each place and how it is turned, line by line; null where something was reported.</summary>
    public static (ColoredBlock Block, Turn Turn)[][]? Place(Layout layout) =>
        PlaceBlocks(layout.Pattern, layout.Size, layout.Blocks, layout.Cells, layout.Findings);

    private static (ColoredBlock Block, Turn Turn)[][]? PlaceBlocks(
        Pattern pattern,
        SizeDesign size,
        BlockSet blocks,
        FillCell[][] cells,
        FindingCollector findings
    )
    {
        (Length Width, Length Height)? common = CommonSize(pattern, size, blocks, cells, findings);
        if (common is not { } finished)
        {
            return null;
        }
        var colored = new Dictionary<(string, bool), ColoredBlock>();
        var placed = new (ColoredBlock, Turn)[cells.Length][];
        for (int r = 0; r < placed.Length; r++)
        {
            placed[r] = new (ColoredBlock, Turn)[cells[r].Length];
            for (int c = 0; c < placed[r].Length; c++)
            {
                FillCell cell = cells[r][c];
                if (
                    !colored.TryGetValue(
                        (cell.Coloring, cell.Turn.SwapsSides),
                        out ColoredBlock? block
                    )
                )
                {
                    Coloring coloring = pattern.Coloring(cell.Coloring)!;
                    Block? drawn = coloring.IsPlain ? null : blocks.Find(coloring.Block!, size);
                    // A plain block turned is a plain block of the place's own shape.
                    block = drawn is null
                        ? new ColoredBlock(coloring, null, finished.Width, finished.Height)
                        : new ColoredBlock(coloring, drawn, drawn.Width, drawn.Height);
                    colored.Add((cell.Coloring, cell.Turn.SwapsSides), block);
                }
                placed[r][c] = (block, block.Block is null ? Turn.None : cell.Turn);
            }
        }
        return placed;
    }

    /// <summary>The size that all places share; reports blocks that differ. Plain blocks take the others' size.</summary>
    private static (Length Width, Length Height)? CommonSize(
        Pattern pattern,
        SizeDesign size,
        BlockSet blocks,
        FillCell[][] cells,
        FindingCollector findings
    )
    {
        (Length Width, Length Height)? common = null;
        string firstKey = "";
        Span firstSpan = Span.None;
        bool agree = true;
        var compared = new HashSet<(string, bool)>();
        foreach (FillCell cell in cells.SelectMany(line => line))
        {
            Coloring coloring = pattern.Coloring(cell.Coloring)!;
            if (coloring.IsPlain || !compared.Add((coloring.Block!, cell.Turn.SwapsSides)))
            {
                continue;
            }
            if (blocks.Find(coloring.Block!, size) is not { } block)
            {
                agree = false;
                continue;
            }
            (Length, Length) own = cell.Turn.SwapsSides
                ? (block.Height, block.Width)
                : (block.Width, block.Height);
            if (common is { } first && first != own)
            {
                agree = false;
                findings.Add(
                    PP0223_UnequalBlocks.Found(
                        cell.Span,
                        block.Key,
                        own.Item1,
                        own.Item2,
                        firstSpan,
                        firstKey,
                        first.Width,
                        first.Height,
                        size.Key
                    )
                );
            }
            if (common is null)
            {
                common = own;
                firstKey = block.Key;
                firstSpan = cell.Span;
            }
        }
        if (common is null && agree)
        {
            common = size.BlockSize is { } side ? (side, side) : null;
            if (common is null)
            {
                findings.Add(PP0227_SizelessBlock.Found(size.Span, Coloring.PlainPart, size.Key));
            }
        }
        return agree ? common : null;
    }
}
