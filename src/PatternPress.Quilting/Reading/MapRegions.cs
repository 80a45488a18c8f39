using System.Collections.Immutable;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules;
using PatternPress.Source.Syntax;

namespace PatternPress.Quilting.Reading;

/// <summary>
/// Finds the regions of a block's map: touching cells of one letter are one region, which must be a rectangle; with
/// "each" a region is cut into equal ones.
/// </summary>
internal static class MapRegions
{
    /// <param name="units">The unit of each letter; null for one that could not be read.</param>
    public static ImmutableArray<UnitRegion> Find(
        string block,
        ImmutableArray<ImmutableArray<Slice>> rows,
        ImmutableDictionary<string, UnitReader.Reading?> units,
        ReadContext context
    )
    {
        int height = rows.Length,
            width = rows[0].Length;
        var taken = new bool[height, width];
        var unknown = new HashSet<string>(StringComparer.Ordinal);
        var regions = ImmutableArray.CreateBuilder<UnitRegion>();
        for (int r = 0; r < height; r++)
        {
            for (int c = 0; c < width; c++)
            {
                if (taken[r, c])
                {
                    continue;
                }
                string letter = rows[r][c].Text;
                (int columns, int down, int cells) = Flood(rows, taken, r, c);
                if (!units.TryGetValue(letter, out UnitReader.Reading? unit))
                {
                    // In a file that breaks off, the unit may stand in the part that was not read.
                    if (unknown.Add(letter) && context.IsComplete)
                    {
                        context.Report(
                            PP0202_LetterWithoutUnit.Found(
                                rows[r][c].Span,
                                letter,
                                block,
                                units.Keys.Order(StringComparer.Ordinal)
                            )
                        );
                    }
                    continue;
                }
                if (unit is null)
                {
                    continue;
                }
                bool singles = unit.Each is (1, 1);
                if (singles)
                {
                    // Any shape can be cut into single cells, but the flood gave only its bounds.
                    continue;
                }
                (int eachColumns, int eachRows) = unit.Each ?? (columns, down);
                if (cells != columns * down || columns % eachColumns != 0 || down % eachRows != 0)
                {
                    context.Report(
                        PP0204_RegionNotRectangular.Found(
                            rows[r][c].Span,
                            letter,
                            block,
                            cells,
                            columns,
                            down
                        )
                    );
                    continue;
                }
                for (int y = r; y < r + down; y += eachRows)
                {
                    for (int x = c; x < c + columns; x += eachColumns)
                    {
                        regions.Add(
                            new UnitRegion(
                                unit.Design,
                                x,
                                y,
                                eachColumns,
                                eachRows,
                                rows[y][x].Span
                            )
                        );
                    }
                }
            }
        }
        for (int r = 0; r < height; r++)
        {
            for (int c = 0; c < width; c++)
            {
                if (units.GetValueOrDefault(rows[r][c].Text) is { Each: (1, 1) } unit)
                {
                    regions.Add(new UnitRegion(unit.Design, c, r, 1, 1, rows[r][c].Span));
                }
            }
        }
        regions.Sort(
            (a, b) => a.Row != b.Row ? a.Row.CompareTo(b.Row) : a.Column.CompareTo(b.Column)
        );
        return regions.ToImmutable();
    }

    // Marks the touching cells of one letter as taken. The first cell met is in the top row, but not always in the
    // leftmost column, so a region whose bounds do not start at it is no rectangle: its cell count tells.
    private static (int Columns, int Rows, int Cells) Flood(
        ImmutableArray<ImmutableArray<Slice>> rows,
        bool[,] taken,
        int row,
        int column
    )
    {
        string letter = rows[row][column].Text;
        int left = column,
            right = column,
            bottom = row,
            cells = 0;
        var open = new Stack<(int Row, int Column)>();
        open.Push((row, column));
        taken[row, column] = true;
        while (open.TryPop(out var cell))
        {
            cells++;
            left = Math.Min(left, cell.Column);
            right = Math.Max(right, cell.Column);
            bottom = Math.Max(bottom, cell.Row);
            foreach ((int r, int c) in Neighbours(cell))
            {
                if (
                    r >= 0
                    && r < rows.Length
                    && c >= 0
                    && c < rows[0].Length
                    && !taken[r, c]
                    && rows[r][c].Text == letter
                )
                {
                    taken[r, c] = true;
                    open.Push((r, c));
                }
            }
        }
        return (right - left + 1, bottom - row + 1, cells);
    }

    private static (int Row, int Column)[] Neighbours((int Row, int Column) cell) =>
        [
            (cell.Row - 1, cell.Column),
            (cell.Row + 1, cell.Column),
            (cell.Row, cell.Column - 1),
            (cell.Row, cell.Column + 1),
        ];
}
