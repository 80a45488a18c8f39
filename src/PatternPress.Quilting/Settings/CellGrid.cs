using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Rules;

namespace PatternPress.Quilting.Settings;

/// <summary>
/// Finds the blocks that a layout draws in cells of unlike widths. A block with a size takes the cells that measure as much; one
/// without takes as many touching cells of its coloring as have its shape; a plain block takes them all, as a rectangle.
/// </summary>
internal sealed class CellGrid
{
    private readonly Layout _layout;
    private readonly Length[] _x;
    private readonly Length[] _y;
    private readonly bool[,] _taken;
    private readonly Dictionary<(string, Length, Length), ColoredBlock> _blocks = [];

    // A drawing that repeats has the same fault again and again.
    private readonly HashSet<Source.Span> _reported = [];

    /// <param name="x">Where columns begin; one more than there are, for the right edge.</param>
    /// <param name="y">Where rows begin, and the lower edge.</param>
    public CellGrid(Layout layout, Length[] x, Length[] y)
    {
        _layout = layout;
        (_x, _y) = (x, y);
        _taken = new bool[y.Length - 1, x.Length - 1];
    }

    public Length Width => _x[^1];

    public Length Height => _y[^1];

    /// <summary>Where so many columns begin, and the end of the last; widths repeat where there are fewer.</summary>
    public static Length[] Lines(IReadOnlyList<Length> widths, int count)
    {
        var lines = new Length[count + 1];
        lines[0] = Length.Zero;
        for (int i = 0; i < count; i++)
        {
            lines[i + 1] = lines[i] + widths[i % widths.Count];
        }
        return lines;
    }

    /// <summary>Every block in its place, row by row from the upper left; null where something was reported.</summary>
    public List<BlockPlace>? Blocks()
    {
        var places = new List<BlockPlace>();
        bool all = true;
        for (int row = 0; row < _y.Length - 1; row++)
        {
            for (int column = 0; column < _x.Length - 1; column++)
            {
                if (_taken[row, column])
                {
                    continue;
                }
                if (BlockAt(row, column) is { } place)
                {
                    places.Add(place);
                }
                else
                {
                    all = false;
                    // What follows is looked at as if the cell were filled, so that other faults come out too.
                    _taken[row, column] = true;
                }
            }
        }
        return all ? places : null;
    }

    private BlockPlace? BlockAt(int row, int column)
    {
        FillCell cell = _layout.Cells[row][column];
        Coloring coloring = _layout.Pattern.Coloring(cell.Coloring)!;
        if (coloring.Block is not { } key)
        {
            int across = Run(row, column, int.MaxValue),
                down = Depth(row, column, across, int.MaxValue);
            return Take(row, column, across, down, coloring, null, Turn.None);
        }
        return _layout.Pattern.Block(key) is not { } design ? null
            : design.Sized ? Sized(row, column, cell, coloring, design)
            : Fitted(row, column, cell, coloring, design);
    }

    // As many cells as the block's own size takes.
    private BlockPlace? Sized(
        int row,
        int column,
        FillCell cell,
        Coloring coloring,
        BlockDesign design
    )
    {
        if (_layout.Blocks.Find(design.Key, _layout.Size) is not { } block)
        {
            return null;
        }
        (Length width, Length height) = cell.Turn.SwapsSides
            ? (block.Height, block.Width)
            : (block.Width, block.Height);
        int across = Count(_x, column, width),
            down = Count(_y, row, height);
        if (
            across > 0
            && down > 0
            && Run(row, column, across) == across
            && Depth(row, column, across, down) == down
        )
        {
            return Take(row, column, across, down, coloring, block, cell.Turn);
        }
        if (!_reported.Add(cell.Span))
        {
            return null;
        }
        int wide = Run(row, column, int.MaxValue),
            high = Depth(row, column, 1, int.MaxValue);
        _layout.Findings.Add(
            PP0261_BlockDoesNotFitCells.Found(
                cell.Span,
                cell.Coloring,
                _layout.Size.Key,
                width,
                height,
                column,
                row,
                _x[column + wide] - _x[column],
                _y[row + high] - _y[row]
            )
        );
        return null;
    }

    // The largest of the block's shape that fits into the touching cells.
    private BlockPlace? Fitted(
        int row,
        int column,
        FillCell cell,
        Coloring coloring,
        BlockDesign design
    )
    {
        (Length wide, Length high) = cell.Turn.SwapsSides
            ? (design.Height, design.Width)
            : (design.Width, design.Height);
        for (int across = Run(row, column, int.MaxValue); across > 0; across--)
        {
            Length width = _x[column + across] - _x[column];
            Length height = width * (high.Inches.One / wide.Inches.One);
            int down = Count(_y, row, height);
            if (down > 0 && Depth(row, column, across, down) == down)
            {
                return
                    _layout.Blocks.Draw(
                        design,
                        Length.Max(width, height),
                        _layout.Size,
                        _layout.Findings
                    )
                        is { } block
                    ? Take(row, column, across, down, coloring, block, cell.Turn)
                    : null;
            }
        }
        if (!_reported.Add(cell.Span))
        {
            return null;
        }
        _layout.Findings.Add(
            PP0261_BlockDoesNotFitCells.WithoutSize(
                cell.Span,
                cell.Coloring,
                _layout.Size.Key,
                wide,
                high,
                column,
                row,
                _x[column + 1] - _x[column],
                _y[row + 1] - _y[row]
            )
        );
        return null;
    }

    // How many cells from a line on measure so much; 0 if a cell is cut or they end before.
    private static int Count(Length[] lines, int from, Length measure)
    {
        for (int to = from + 1; to < lines.Length; to++)
        {
            int order = (lines[to] - lines[from]).CompareTo(measure);
            if (order >= 0)
            {
                return order == 0 ? to - from : 0;
            }
        }
        return 0;
    }

    // How many free cells beside each other are drawn alike, itself counted.
    private int Run(int row, int column, int most)
    {
        int count = 1;
        while (
            count < most
            && column + count < _x.Length - 1
            && Continues(row, column, row, column + count)
        )
        {
            count++;
        }
        return count;
    }

    // How many rows of so many cells are drawn alike, its own counted.
    private int Depth(int row, int column, int across, int most)
    {
        int count = 1;
        for (; count < most && row + count < _y.Length - 1; count++)
        {
            for (int i = 0; i < across; i++)
            {
                if (!Continues(row, column, row + count, column + i))
                {
                    return count;
                }
            }
        }
        return count;
    }

    private bool Continues(int row, int column, int otherRow, int otherColumn)
    {
        FillCell cell = _layout.Cells[row][column],
            other = _layout.Cells[otherRow][otherColumn];
        return !_taken[otherRow, otherColumn]
            && cell.Coloring == other.Coloring
            && cell.Turn == other.Turn;
    }

    private BlockPlace Take(
        int row,
        int column,
        int across,
        int down,
        Coloring coloring,
        Block? block,
        Turn turn
    )
    {
        for (int r = row; r < row + down; r++)
        {
            for (int c = column; c < column + across; c++)
            {
                _taken[r, c] = true;
            }
        }
        var place = new Rect(
            _x[column],
            _y[row],
            _x[column + across] - _x[column],
            _y[row + down] - _y[row]
        );
        (Length width, Length height) = block is null
            ? (place.Width, place.Height)
            : (block.Width, block.Height);
        if (!_blocks.TryGetValue((coloring.Key, width, height), out ColoredBlock? colored))
        {
            colored = new ColoredBlock(coloring, block, width, height);
            _blocks.Add((coloring.Key, width, height), colored);
        }
        return new BlockPlace(row, column, colored, turn, place);
    }
}
