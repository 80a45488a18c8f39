using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Settings.Fills;

/// <summary>Rings of places around the centre: the first line of the list in the middle, the next around it.</summary>
public sealed class Rings : FillPattern
{
    public override FillKind Kind => FillKind.Rings;

    public override string Keyword => "rings";

    public override bool TrySpread(
        Fill fill,
        int rows,
        int columns,
        [NotNullWhen(true)] out FillCell[,]? cells,
        [NotNullWhen(false)] out string? problem
    )
    {
        problem = null;
        int outermost = (Math.Min(rows, columns) - 1) / 2;
        cells = Spread(
            rows,
            columns,
            (r, c) =>
            {
                int fromEdge = Math.Min(Math.Min(r, c), Math.Min(rows - 1 - r, columns - 1 - c));
                var ring = fill.Rows[(outermost - fromEdge) % fill.Rows.Length];
                return ring[PlaceInRing(r, c, fromEdge, rows, columns) % ring.Length];
            }
        );
        return true;
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
