using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Settings.Fills;

/// <summary>Diagonal stripes, lower left to upper right; the list repeats.</summary>
public sealed class Diagonals : FillPattern
{
    public override FillKind Kind => FillKind.Diagonals;

    public override string Keyword => "diagonals";

    public override bool TrySpread(
        Fill fill,
        FillGrid grid,
        [NotNullWhen(true)] out FillCell[][]? cells,
        [NotNullWhen(false)] out string? problem
    )
    {
        var list = fill.Rows[0];
        problem = null;
        cells = grid.Fill((line, place) => list[grid.Diagonal(line, place) % list.Length]);
        return true;
    }
}
