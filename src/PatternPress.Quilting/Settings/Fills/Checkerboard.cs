using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Settings.Fills;

/// <summary>Two colorings that alternate.</summary>
public sealed class Checkerboard : FillPattern
{
    public override FillKind Kind => FillKind.Checkerboard;

    public override string Keyword => "checkerboard";

    public override bool TrySpread(
        Fill fill,
        FillGrid grid,
        [NotNullWhen(true)] out FillCell[][]? cells,
        [NotNullWhen(false)] out string? problem
    )
    {
        var list = fill.Rows[0];
        if (list.Length != 2)
        {
            cells = null;
            problem = $"a checkerboard alternates two colorings, and {list.Length} are given";
            return false;
        }
        problem = null;
        cells = grid.Fill((line, place) => list[(grid.Between ? line : line + place) % 2]);
        return true;
    }
}
