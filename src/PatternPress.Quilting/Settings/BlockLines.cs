using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Rules;

namespace PatternPress.Quilting.Settings;

/// <summary>
/// Lines of blocks edge to edge, across or down the quilt, with or without a long strip between them. Every other line may be
/// shifted by half a block; half blocks fill its ends.
/// </summary>
internal sealed class BlockLines
{
    private readonly Layout _layout;
    private readonly bool _down;
    private readonly List<BlockPlace> _places = [];
    private readonly List<Sash> _strips = [];

    /// <param name="down">Whether the lines are columns.</param>
    private BlockLines(Layout layout, bool down)
    {
        _layout = layout;
        _down = down;
    }

    /// <param name="lines">The blocks of each line, all of one size.</param>
    public static Field? Lay(
        Layout layout,
        bool down,
        IReadOnlyList<IReadOnlyList<(ColoredBlock Block, Turn Turn)>> lines
    ) => new BlockLines(layout, down).Lay(lines);

    private Field? Lay(IReadOnlyList<IReadOnlyList<(ColoredBlock Block, Turn Turn)>> lines)
    {
        (ColoredBlock block, Turn turn) = lines[0][0];
        (Length width, Length height) = turn.SwapsSides
            ? (block.Height, block.Width)
            : (block.Width, block.Height);
        (Length along, Length across) = _down ? (height, width) : (width, height);
        Length length = along * lines[0].Count;
        ColoredBlock?[] halves = [null, null];
        Turn[] turns = [Turn.None, Turn.None];
        if (_layout.Design.Ends is { } ends && lines.Count > 1)
        {
            for (int end = 0; end < 2; end++)
            {
                FillCell cell = ends.Rows[0][Math.Min(end, ends.Rows[0].Length - 1)];
                halves[end] = Half(cell, along / 2, across);
                turns[end] = halves[end]?.Block is null ? Turn.None : cell.Turn;
            }
            if (halves[0] is null || halves[1] is null)
            {
                return null;
            }
        }
        SashingDesign? sashing = _layout.Design.Sashing;
        Length reached = Length.Zero;
        if (sashing is { Around: true })
        {
            Strip(sashing, 0, length, ref reached);
        }
        for (int line = 0; line < lines.Count; line++)
        {
            if (sashing is not null && line > 0)
            {
                Strip(sashing, line, length, ref reached);
            }
            bool shifted = halves[0] is not null && line % 2 == 1;
            Length at = Length.Zero;
            int count = 0;
            if (shifted)
            {
                Put(halves[0]!, turns[0], along / 2);
            }
            foreach ((ColoredBlock next, Turn way) in lines[line])
            {
                Put(next, way, along);
            }
            if (shifted)
            {
                Put(halves[1]!, turns[1], along / 2);
            }
            reached += across;

            void Put(ColoredBlock piece, Turn way, Length extent)
            {
                Rect place = _down
                    ? new(reached, at, across, extent)
                    : new(at, reached, extent, across);
                _places.Add(
                    _down
                        ? new BlockPlace(count, line, piece, way, place)
                        : new BlockPlace(line, count, piece, way, place)
                );
                count++;
                at += extent;
            }
        }
        if (sashing is { Around: true })
        {
            Strip(sashing, lines.Count, length, ref reached);
        }
        (Length wide, Length high) = _down ? (reached, length) : (length, reached);
        return SectionOrder.Sewn(_layout, wide, high, _places, _strips);
    }

    private void Strip(SashingDesign sashing, int line, Length length, ref Length reached)
    {
        Rect place = _down
            ? new(reached, Length.Zero, sashing.Width, length)
            : new(Length.Zero, reached, length, sashing.Width);
        _strips.Add(
            _down
                ? new Sash(SashKind.Column, 0, line, place, sashing.Fabric.Value)
                : new Sash(SashKind.Row, line, 0, place, sashing.Fabric.Value)
        );
        reached += sashing.Width;
    }

    // A block half as long as the others, or a plain piece; null where it does not fit.
    private ColoredBlock? Half(FillCell cell, Length along, Length across)
    {
        (Length width, Length height) = _down ? (across, along) : (along, across);
        Coloring coloring = _layout.Pattern.Coloring(cell.Coloring)!;
        if (coloring.Block is not { } key)
        {
            return new ColoredBlock(coloring, null, width, height);
        }
        if (_layout.Pattern.Block(key) is not { } design)
        {
            return null;
        }
        (Length ownWidth, Length ownHeight) = cell.Turn.SwapsSides
            ? (height, width)
            : (width, height);
        Length? side =
            design.Sized && _layout.Size.BlockSize is null ? null : Length.Max(ownWidth, ownHeight);
        if (_layout.Blocks.Draw(design, side, _layout.Size, _layout.Findings) is not { } block)
        {
            return null;
        }
        if (block.Width == ownWidth && block.Height == ownHeight)
        {
            return new ColoredBlock(coloring, block, block.Width, block.Height);
        }
        _layout.Findings.Add(
            PP0265_HalfBlockThatDoesNotFit.Found(
                cell.Span,
                cell.Coloring,
                _layout.Size.Key,
                cell.Turn.SwapsSides ? block.Height : block.Width,
                cell.Turn.SwapsSides ? block.Width : block.Height,
                width,
                height
            )
        );
        return null;
    }
}
