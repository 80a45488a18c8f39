using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Settings.Fills;

/// <summary>The whole layout drawn place by place.</summary>
public sealed class WholeMap : FillPattern
{
    public override FillKind Kind => FillKind.Map;

    public override string Keyword => "map";

    public override bool TrySpread(
        Fill fill,
        int rows,
        int columns,
        [NotNullWhen(true)] out FillCell[,]? cells,
        [NotNullWhen(false)] out string? problem
    )
    {
        int widest = fill.Rows.Max(row => row.Length);
        if (fill.Rows.Length != rows || fill.Rows.Any(row => row.Length != columns))
        {
            cells = null;
            problem =
                $"the map is {widest} across and {fill.Rows.Length} down, the size is {columns} across and {rows} down";
            return false;
        }
        problem = null;
        cells = Spread(rows, columns, (r, c) => fill.Rows[r][c]);
        return true;
    }
}
