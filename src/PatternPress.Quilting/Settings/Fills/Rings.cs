using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Settings.Fills;

/// <summary>Rings of places around the centre: the first line of the list in the middle, the next around it.</summary>
public sealed class Rings : FillPattern
{
    public override FillKind Kind => FillKind.Rings;

    public override string Keyword => "rings";

    public override bool IsDrawn => true;

    public override bool TrySpread(
        Fill fill,
        FillGrid grid,
        [NotNullWhen(true)] out FillCell[][]? cells,
        [NotNullWhen(false)] out string? problem
    )
    {
        problem = null;
        int outermost = grid.Between
            ? Math.Min(grid.Rows, grid.Columns) - 1
            : (Math.Min(grid.Rows, grid.Columns) - 1) / 2;
        cells = grid.Fill((line, place) => At(fill, grid, outermost, line, place));
        return true;
    }

    private static FillCell At(Fill fill, FillGrid grid, int outermost, int line, int place)
    {
        // On point the long lines and the lines in between have rings of their own, which take turns.
        bool between = grid.Between && line % 2 == 1;
        int rows = between ? grid.Rows - 1 : grid.Rows,
            columns = grid.LengthOf(line),
            r = grid.Between ? line / 2 : line;
        int fromEdge = Math.Min(Math.Min(r, place), Math.Min(rows - 1 - r, columns - 1 - place));
        int level =
            !grid.Between ? fromEdge
            : between ? (2 * fromEdge) + 1
            : 2 * fromEdge;
        var ring = fill.Rows[(outermost - level) % fill.Rows.Length];
        return ring[PlaceInRing(r, place, fromEdge, rows, columns) % ring.Length];
    }

    /// <summary>Places of a ring are counted clockwise from its upper left corner, from 0.</summary>
    private static int PlaceInRing(int row, int column, int fromEdge, int rows, int columns)
    {
        int across = columns - (2 * fromEdge),
            down = rows - (2 * fromEdge);
        int r = row - fromEdge,
            c = column - fromEdge;
        if (r == 0)
        {
            return c;
        }
        if (c == across - 1)
        {
            return across - 1 + r;
        }
        if (r == down - 1)
        {
            return across - 1 + down - 1 + (across - 1 - c);
        }
        return (2 * (across - 1)) + down - 1 + (down - 1 - r);
    }
}
