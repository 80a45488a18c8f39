using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Settings.Fills;

/// <summary>A way of spreading colorings over the rows and columns of a setting.</summary>
public abstract class FillPattern
{
    public abstract FillKind Kind { get; }

    /// <summary>The word the source uses.</summary>
    public abstract string Keyword { get; }

    /// <summary>
    /// Gives every place a coloring.
    /// </summary>
    /// <param name="fill">What the designer wrote; every row has at least one cell.</param>
    /// <param name="rows">Places down, at least 1.</param>
    /// <param name="columns">Places across, at least 1.</param>
    /// <param name="cells">Row by row, all places.</param>
    /// <param name="problem">Why it cannot be done, in words with the numbers.</param>
    public abstract bool TrySpread(
        Fill fill,
        int rows,
        int columns,
        [NotNullWhen(true)] out FillCell[,]? cells,
        [NotNullWhen(false)] out string? problem
    );

    /// <summary>Fills every place by a rule that cannot fail.</summary>
    protected static FillCell[,] Spread(int rows, int columns, Func<int, int, FillCell> at)
    {
        var cells = new FillCell[rows, columns];
        for (int r = 0; r < rows; r++)
        {
            for (int c = 0; c < columns; c++)
            {
                cells[r, c] = at(r, c);
            }
        }
        return cells;
    }
}
