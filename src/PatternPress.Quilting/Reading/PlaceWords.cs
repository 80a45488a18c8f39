using System.Collections.Immutable;

namespace PatternPress.Quilting.Reading;

/// <summary>The words before a unit's comma that say where or which way. Which of them a kind takes is its own business.</summary>
internal static class PlaceWords
{
    public static ImmutableArray<string> All { get; } =
    [
        "up",
        "down",
        "left",
        "right",
        "top",
        "bottom",
        "upper-left",
        "upper-right",
        "lower-left",
        "lower-right",
        "level",
        "upright",
        "clockwise",
        "counterclockwise",
        "whole",
        "split",
    ];

    /// <summary>Words before the comma that a finished measure follows, or several joined by "and".</summary>
    public static ImmutableArray<string> OfMeasures { get; } = ["center", "logs"];
}
