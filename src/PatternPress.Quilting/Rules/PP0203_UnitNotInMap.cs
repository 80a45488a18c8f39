using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A unit is described but its letter does not occur in the map.</summary>
public sealed class PP0203_UnitNotInMap : ReadingRule
{
    public static PP0203_UnitNotInMap Instance { get; } = new();

    private PP0203_UnitNotInMap()
        : base("PP0203", Severity.Warning, "Unit not in the map") { }

    /// <param name="unit">The unit's letter.</param>
    /// <param name="map">The block's map.</param>
    public static Diagnostic Found(Span unit, string letter, string block, Span map) =>
        Instance.Report(
            unit,
            $"unit \"{letter}\" of block \"{block}\" does not occur in its map",
            "described but never used",
            hint: $"put \"{letter}\" in the map, or delete this unit",
            others: new Label(map, "the map")
        );
}
