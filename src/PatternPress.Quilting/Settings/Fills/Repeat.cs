using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Settings.Fills;

/// <summary>A drawing that repeats to the right and down.</summary>
public sealed class Repeat : FillPattern
{
    public override FillKind Kind => FillKind.Repeat;

    public override string Keyword => "repeat";

    public override bool IsDrawn => true;

    public override bool TrySpread(
        Fill fill,
        FillGrid grid,
        [NotNullWhen(true)] out FillCell[][]? cells,
        [NotNullWhen(false)] out string? problem
    )
    {
        problem = null;
        cells = grid.Fill(
            (r, c) =>
            {
                var row = fill.Rows[r % fill.Rows.Length];
                return row[c % row.Length];
            }
        );
        return true;
    }
}
