using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Settings.Fills;

/// <summary>The whole layout drawn place by place.</summary>
public sealed class WholeMap : FillPattern
{
    public override FillKind Kind => FillKind.Map;

    public override string Keyword => "map";

    public override bool IsDrawn => true;

    public override bool TrySpread(
        Fill fill,
        FillGrid grid,
        [NotNullWhen(true)] out FillCell[][]? cells,
        [NotNullWhen(false)] out string? problem
    )
    {
        int widest = fill.Rows.Max(row => row.Length);
        bool fits = fill.Rows.Length == grid.Lines;
        for (int line = 0; fits && line < grid.Lines; line++)
        {
            fits = fill.Rows[line].Length == grid.LengthOf(line);
        }
        if (!fits)
        {
            cells = null;
            problem =
                $"the map is {widest} across and {fill.Rows.Length} down, the size is {grid.Columns} across and {grid.Lines} down";
            return false;
        }
        problem = null;
        cells = grid.Fill((line, place) => fill.Rows[line][place]);
        return true;
    }
}
