using PatternPress.Quilting.Settings.Fills;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A full map of the quilt has more or fewer places than a size has blocks.</summary>
public sealed class PP0214_MapDoesNotMatchSize : ReadingRule
{
    public static PP0214_MapDoesNotMatchSize Instance { get; } = new();

    private PP0214_MapDoesNotMatchSize()
        : base("PP0214", Severity.Error, "Map that does not match the size") { }

    /// <param name="map">The map.</param>
    /// <param name="blocks">Where the size says its blocks.</param>
    public static Finding Found(
        Span map,
        Span blocks,
        string size,
        int mapColumns,
        int mapRows,
        FillGrid grid
    ) =>
        new(
            Instance.Report(
                map,
                $"the map has {mapColumns} × {mapRows} places, size \"{size}\" has {grid.Columns} × {grid.Rows} blocks"
                    + (grid.Between ? $" and {grid.Columns - 1} × {grid.Rows - 1} in between" : ""),
                $"{mapColumns} across, {mapRows} down",
                hint: (
                    grid.Between || grid.Shifted
                        ? $"draw {grid.Lines} lines of {grid.Columns} and {grid.Columns - 1} places by turns"
                        : $"draw {grid.Columns} places across and {grid.Rows} down"
                ) + ", or leave out the map and let the fill repeat",
                others: new Label(blocks, $"{grid.Columns} across, {grid.Rows} down")
            ),
            size,
            ""
        );
}
