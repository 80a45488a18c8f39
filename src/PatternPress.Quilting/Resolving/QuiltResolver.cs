using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Quilting.Settings;
using PatternPress.Quilting.Settings.Fills;
using PatternPress.Quilting.Techniques;
using PatternPress.Source;

namespace PatternPress.Quilting.Resolving;

/// <summary>Turns a pattern and one of its sizes into a quilt with every patch placed.</summary>
public static class QuiltResolver
{
    /// <summary>No bed and no wall takes more; keeps numbers and pages within reason.</summary>
    private static readonly Length _largest = Length.FromInches(400);

    /// <summary>Draws every block of a pattern at every size's block size, used or not.</summary>
    /// <param name="findings">Units that cannot fill their regions are reported here.</param>
    /// <returns>Blocks by key and longer side asked for; blocks with a problem are missing.</returns>
    public static BlockSet ResolveBlocks(Pattern pattern, FindingCollector findings)
    {
        var blocks = new Dictionary<(string, Length?), Block>();
        foreach (SizeDesign size in pattern.Sizes)
        {
            foreach (BlockDesign design in pattern.Blocks)
            {
                if (blocks.ContainsKey((design.Key, size.BlockSize)))
                {
                    continue;
                }
                if (!design.Sized && size.BlockSize is null)
                {
                    findings.Add(PP0227_SizelessBlock.Found(design.Span, design.Key, size.Key));
                    continue;
                }
                var problems = new List<(UnitRegion Region, Rect Place, UnitProblem Problem)>();
                Block? block = BlockResolver.Resolve(design, size.BlockSize, problems);
                if (block is not null)
                {
                    blocks.Add((design.Key, size.BlockSize), block);
                }
                // Equal regions of one letter have one fault.
                foreach (
                    (UnitRegion region, Rect place, UnitProblem problem) in problems.DistinctBy(p =>
                        (p.Region.Design.Letter, p.Place.Width, p.Place.Height)
                    )
                )
                {
                    string letter = region.Design.Letter;
                    findings.Add(
                        problem.Kind == UnitProblemKind.Words
                            ? new Finding(
                                PP0206_UnitWordsWithoutMeaning.Found(problem, letter, design.Key)
                            )
                            : PP0207_UnitDoesNotFitRegion.Found(
                                problem,
                                region.Span,
                                letter,
                                design.Key,
                                place.Width,
                                place.Height,
                                size.Key
                            )
                    );
                }
            }
        }
        return new BlockSet(blocks);
    }

    /// <summary>Places everything. Null where something was reported.</summary>
    public static Quilt? Resolve(
        Pattern pattern,
        SizeDesign size,
        BlockSet blocks,
        FindingCollector findings
    )
    {
        QuiltDesign design = size.Quilt;
        if (SettingCatalog.Find(design.Setting.Value) is not { } setting)
        {
            return null;
        }
        FillGrid grid = setting.Places(size.Rows, size.Columns);
        if (
            !SettingNeeds.AreMet(setting, size, findings)
            || Spread(design, grid, size, findings) is not { } cells
        )
        {
            return null;
        }
        if (PlaceBlocks(pattern, size, blocks, cells, findings) is not { } placed)
        {
            return null;
        }
        if (setting.StandsOnPoint && !AreSquare(placed, cells, size, findings))
        {
            return null;
        }
        Field field = setting.Lay(design, placed);
        Length margin = Length.Zero;
        foreach (BorderDesign border in design.Borders)
        {
            margin += border.Width;
        }
        var by = new Point(margin, margin);
        var center = new Rect(margin, margin, field.Width, field.Height);
        var borders = ImmutableArray.CreateBuilder<Border>(design.Borders.Length);
        Rect inside = center;
        for (int i = 0; i < design.Borders.Length; i++)
        {
            borders.Add(BorderLayout.Around(inside, design.Borders[i], i + 1));
            inside = borders[i].Outside;
        }
        if (inside.Width > _largest || inside.Height > _largest)
        {
            findings.Add(
                PP0220_TooManyBlocks.TooLarge(
                    size.Span,
                    size.Key,
                    inside.Width,
                    inside.Height,
                    _largest
                )
            );
            return null;
        }
        return new Quilt(
            pattern,
            size,
            inside.Width,
            inside.Height,
            center,
            [.. field.Places.Select(p => p.MovedBy(by))],
            [.. field.Sashes.Select(s => s.MovedBy(by))],
            borders.MoveToImmutable()
        )
        {
            Pieces = [.. field.Pieces.Select(p => p.MovedBy(by))],
            Rows = field.Rows,
        };
    }

    /// <summary>A coloring for every place; null where something was reported.</summary>
    private static FillCell[][]? Spread(
        QuiltDesign design,
        FillGrid grid,
        SizeDesign size,
        FindingCollector findings
    )
    {
        if (design.Between is not { } between || !grid.Between)
        {
            return Spread(design.Fill, grid, size, findings);
        }
        // The places in between have a fill of their own, in rows and columns like the others.
        FillCell[][]? main = Spread(
            design.Fill,
            new FillGrid(grid.Rows, grid.Columns),
            size,
            findings
        );
        FillCell[][]? others =
            grid.Rows > 1 && grid.Columns > 1
                ? Spread(between, new FillGrid(grid.Rows - 1, grid.Columns - 1), size, findings)
                : [];
        return main is null || others is null
            ? null
            : grid.Fill(
                (line, place) => line % 2 == 0 ? main[line / 2][place] : others[line / 2][place]
            );
    }

    private static FillCell[][]? Spread(
        Fill fill,
        FillGrid grid,
        SizeDesign size,
        FindingCollector findings
    )
    {
        if (
            FillCatalog
                .Of(fill.Kind)
                .TrySpread(fill, grid, out FillCell[][]? cells, out string? problem)
        )
        {
            return cells;
        }
        findings.Add(
            fill.Kind switch
            {
                FillKind.Map => PP0214_MapDoesNotMatchSize.Found(
                    fill.Span,
                    size.Span,
                    size.Key,
                    fill.Rows.Max(r => r.Length),
                    fill.Rows.Length,
                    grid
                ),
                FillKind.Scatter => PP0224_ScatterTooTight.Found(
                    fill.Span,
                    fill.Rows.Sum(r => r.Length),
                    size.Key,
                    grid.Columns,
                    grid.Rows
                ),
                _ => new Finding(PP0230_WrongNumberOfEntries.Found(fill.Span, problem)),
            }
        );
        return null;
    }

    // A line on point goes through the corners of all its blocks, and so do the sides of the quilt.
    private static bool AreSquare(
        (ColoredBlock Block, Turn Turn)[][] placed,
        FillCell[][] cells,
        SizeDesign size,
        FindingCollector findings
    )
    {
        ColoredBlock block = placed[0][0].Block;
        if (block.Width == block.Height)
        {
            return true;
        }
        findings.Add(
            PP0244_OblongBlockOnPoint.Found(
                cells[0][0].Span,
                block.Key,
                block.Width,
                block.Height,
                size.Key
            )
        );
        return false;
    }

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
