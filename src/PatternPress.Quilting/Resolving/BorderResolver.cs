using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Quilting.Settings.Borders;

namespace PatternPress.Quilting.Resolving;

/// <summary>Puts the rounds and borders of one size around its field, coping strips worked out.</summary>
internal sealed class BorderResolver(
    Pattern pattern,
    SizeDesign size,
    BlockSet blocks,
    FindingCollector findings
)
{
    private readonly Dictionary<
        (string Coloring, Length Width, Length Height),
        ColoredBlock
    > _drawn = [];

    /// <returns>From the inside out, in the coordinates of the field; null where something was reported.</returns>
    public ImmutableArray<Border>? Around(Rect field)
    {
        var borders = ImmutableArray.CreateBuilder<Border>();
        Rect inside = field;
        foreach ((int number, BorderDesign design, bool round) in size.Quilt.NumberedBorders())
        {
            // What lies further out cannot be told once a border does not close.
            if (Place(inside, design, number) is not { } placed)
            {
                return null;
            }
            borders.AddRange(placed.Select(border => border with { IsRound = round }));
            inside = placed[^1].Outside;
        }
        return borders.ToImmutable();
    }

    private ImmutableArray<Border>? Place(Rect inside, BorderDesign design, int number)
    {
        if (design.Blocks is not { } row)
        {
            Border strips = BorderStrips.Around(inside, design, number, design.Widths!.Value);
            return InCorners(strips) is { } whole ? [whole] : null;
        }
        if (
            HeightOf(row, design) is not { } width
            || Drawn(row.Repeat, width, design) is not { } repeat
            || Drawn(row.AfterMiddle, width, design) is not { } second
            || Drawn(row.Middle is { } one ? [one] : [], width, design) is not { } middle
        )
        {
            return null;
        }
        var closing = new Closing(Sum(repeat), Sum(middle), row.HasMiddle);
        if (closing.Halves && Sum(second) != closing.Repeat)
        {
            findings.Add(
                PP0252_UnequalBorderBlocks.Halves(row.Span, closing.Repeat, Sum(second), size.Key)
            );
            return null;
        }
        var placed = ImmutableArray.CreateBuilder<Border>(2);
        if (design.Coping is { } coping)
        {
            if (Cope(inside, design, coping, closing, width, number) is not { } strip)
            {
                return null;
            }
            placed.Add(strip);
            inside = strip.Outside;
            number++;
        }
        var border = new Border(number, design, inside, new BorderWidths(width), []);
        (Length sides, Length ends) runs = Coping.Runs(inside, width, design.Corners);
        if (
            closing.RepeatsIn(runs.sides) is not { } down
            || closing.RepeatsIn(runs.ends) is not { } across
        )
        {
            Length least = size.House.CopingLeast,
                most = size.House.CopingMost;
            findings.Add(
                PP0251_BlocksDoNotComeOut.Found(
                    row.Span,
                    number,
                    closing,
                    runs,
                    least,
                    most,
                    size.Key
                )
            );
            return null;
        }
        var laid = ImmutableArray.CreateBuilder<BorderBlock>();
        foreach ((BorderSide side, Rect place) in BorderStrips.Sides(border))
        {
            long repeats = side is BorderSide.Left or BorderSide.Right ? down : across;
            laid.AddRange(
                BorderRows.Along(
                    side,
                    place,
                    closing.Halves
                        ? [.. Times(repeat, repeats / 2), .. middle, .. Times(second, repeats / 2)]
                        : [.. Times(repeat, repeats)]
                )
            );
        }
        border = border with { Blocks = laid.ToImmutable() };
        if (design.Corners == BorderCorners.Squares)
        {
            string corner = design.CornerFabric!.Value.Value;
            border = border with
            {
                Pieces =
                [
                    .. BorderStrips
                        .Corners(border)
                        .Select(place => new BorderPiece(BorderSide.Corner, place, corner)),
                ],
            };
        }
        if (InCorners(border) is not { } finished)
        {
            return null;
        }
        placed.Add(finished);
        return placed.ToImmutable();
    }

    private Border? Cope(
        Rect inside,
        BorderDesign design,
        CopingDesign coping,
        Closing closing,
        Length width,
        int number
    )
    {
        Length least = coping.Least ?? size.House.CopingLeast,
            most = coping.Most ?? size.House.CopingMost;
        (Length, Length) runs = Coping.Runs(inside, width, design.Corners);
        if (Coping.Solve(runs, closing, least, most) is not { } widths)
        {
            findings.Add(
                PP0251_BlocksDoNotComeOut.WithinLimits(
                    coping.Span,
                    number,
                    closing,
                    runs,
                    least,
                    most,
                    size.Key
                )
            );
            return null;
        }
        var strip = new BorderDesign(
            widths,
            coping.Fabric,
            BorderCorners.SidesFirst,
            null,
            coping.Name,
            coping.Span
        );
        return BorderStrips.Around(inside, strip, number, widths) with { IsCoping = true };
    }

    // A corner block is made as large as its corner.
    private Border? InCorners(Border border)
    {
        if (border.Design.CornerBlock is not { } cell)
        {
            return border;
        }
        Length side = border.Widths.Even!.Value;
        if (Drawn(cell, side) is not { } block)
        {
            return null;
        }
        if (block.Width != block.Height)
        {
            findings.Add(
                PP0252_UnequalBorderBlocks.Corner(
                    cell.Span,
                    block.Key,
                    block.Width,
                    block.Height,
                    size.Key
                )
            );
            return null;
        }
        return border with
        {
            Blocks =
            [
                .. border.Blocks,
                .. BorderRows.InCorners(BorderStrips.Corners(border), block, TurnOf(cell, block)),
            ],
        };
    }

    /// <summary>How wide a border of blocks is: as it says, or as high as its first block that has a size.</summary>
    private Length? HeightOf(BorderBlocks row, BorderDesign design)
    {
        if (design.Widths is { } widths)
        {
            return widths.Even!.Value;
        }
        foreach (FillCell cell in row.Cells())
        {
            if (DesignOf(cell) is not { } block)
            {
                continue;
            }
            if (block.Sized)
            {
                return cell.Turn.SwapsSides ? block.Width : block.Height;
            }
            findings.Add(PP0227_SizelessBlock.Found(block.Span, block.Key, size.Key));
            return null;
        }
        findings.Add(new Finding(PP0253_BorderKeysThatDisagree.WithoutWidth(row.Span)));
        return null;
    }

    private ImmutableArray<(ColoredBlock Block, Turn Turn)>? Drawn(
        ImmutableArray<FillCell> cells,
        Length height,
        BorderDesign design
    )
    {
        var drawn = ImmutableArray.CreateBuilder<(ColoredBlock, Turn)>(cells.Length);
        foreach (FillCell cell in cells)
        {
            if (
                design.Widths is null
                && DesignOf(cell) is { Sized: true } own
                && (cell.Turn.SwapsSides ? own.Width : own.Height) is var high
                && high != height
            )
            {
                findings.Add(
                    PP0252_UnequalBorderBlocks.Heights(
                        cell.Span,
                        cell.Coloring,
                        high,
                        height,
                        size.Key
                    )
                );
                return null;
            }
            if (Drawn(cell, height) is not { } block)
            {
                return null;
            }
            drawn.Add((block, TurnOf(cell, block)));
        }
        return drawn.MoveToImmutable();
    }

    /// <summary>A block as high as its row, in proportion; a plain block is square.</summary>
    private ColoredBlock? Drawn(FillCell cell, Length height)
    {
        Coloring coloring = pattern.Coloring(cell.Coloring)!;
        if (DesignOf(cell) is not { } design)
        {
            return Known(new ColoredBlock(coloring, null, height, height));
        }
        Length high = cell.Turn.SwapsSides ? design.Width : design.Height;
        Length longer =
            Length.Max(design.Width, design.Height) * (height.Inches.One / high.Inches.One);
        Block? block = blocks.Draw(design, longer, size, findings);
        return block is null
            ? null
            : Known(new ColoredBlock(coloring, block, block.Width, block.Height));
    }

    // Equal blocks are one object, so that what is drawn of them is drawn once.
    private ColoredBlock Known(ColoredBlock block)
    {
        var key = (block.Key, block.Width, block.Height);
        if (!_drawn.TryGetValue(key, out ColoredBlock? known))
        {
            _drawn.Add(key, known = block);
        }
        return known;
    }

    private BlockDesign? DesignOf(FillCell cell) =>
        pattern.Coloring(cell.Coloring)?.Block is { } key ? pattern.Block(key) : null;

    private static Turn TurnOf(FillCell cell, ColoredBlock block) =>
        block.Block is null ? Turn.None : cell.Turn;

    private static Length Sum(ImmutableArray<(ColoredBlock Block, Turn Turn)> blocks)
    {
        Length sum = Length.Zero;
        foreach ((ColoredBlock block, Turn turn) in blocks)
        {
            sum += BorderRows.LengthOf(block, turn);
        }
        return sum;
    }

    private static IEnumerable<(ColoredBlock, Turn)> Times(
        ImmutableArray<(ColoredBlock, Turn)> blocks,
        long times
    )
    {
        for (long i = 0; i < times; i++)
        {
            foreach ((ColoredBlock, Turn) block in blocks)
            {
                yield return block;
            }
        }
    }
}
