using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A block lists another number of column widths or row heights than its map has.</summary>
public sealed class PP0225_GridDoesNotMatchMap : ReadingRule
{
    public static PP0225_GridDoesNotMatchMap Instance { get; } = new();

    private PP0225_GridDoesNotMatchMap()
        : base("PP0225", Severity.Error, "Grid that does not match the map") { }

    /// <param name="grid">Where the widths or heights stand.</param>
    /// <param name="axis">"columns" or "rows".</param>
    /// <param name="given">How many are given.</param>
    /// <param name="inMap">How many the map has.</param>
    public static Diagnostic Found(
        Span grid,
        string axis,
        string block,
        int given,
        Span map,
        int inMap
    ) =>
        Instance.Report(
            grid,
            $"block \"{block}\" gives {given} {axis}, its map has {inMap}",
            $"{given} given",
            hint: $"give one number for each of the map's {inMap} {axis}",
            others: new Label(map, $"{inMap} {axis} drawn")
        );
}
