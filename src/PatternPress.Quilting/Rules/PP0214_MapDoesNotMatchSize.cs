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
        int columns,
        int rows
    ) =>
        new(
            Instance.Report(
                map,
                $"the map has {mapColumns} × {mapRows} places, size \"{size}\" has {columns} × {rows} blocks",
                $"{mapColumns} across, {mapRows} down",
                hint: $"draw {columns} places across and {rows} down, or leave out the map and let the fill repeat",
                others: new Label(blocks, $"{columns} across, {rows} down")
            ),
            size,
            ""
        );
}
