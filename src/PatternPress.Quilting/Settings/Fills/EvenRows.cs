using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Settings.Fills;

/// <summary>Each row of the quilt in one coloring; the list repeats.</summary>
public sealed class EvenRows : FillPattern
{
    public override FillKind Kind => FillKind.Rows;

    public override string Keyword => "rows";

    public override bool TrySpread(
        Fill fill,
        FillGrid grid,
        [NotNullWhen(true)] out FillCell[][]? cells,
        [NotNullWhen(false)] out string? problem
    )
    {
        var list = fill.Rows[0];
        problem = null;
        cells = grid.Fill((line, _) => list[line % list.Length]);
        return true;
    }
}
