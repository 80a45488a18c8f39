using PatternPress.Quilting.Measures;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A block at the end of a staggered line is not half as long as the others.</summary>
public sealed class PP0265_HalfBlockThatDoesNotFit : ReadingRule
{
    public static PP0265_HalfBlockThatDoesNotFit Instance { get; } = new();

    private PP0265_HalfBlockThatDoesNotFit()
        : base("PP0265", Severity.Error, "Half block that does not fit") { }

    /// <param name="cell">Where the ends are named.</param>
    /// <param name="width">Of the block as it is turned.</param>
    /// <param name="height">Of the block as it is turned.</param>
    /// <param name="placeWidth">Of half a place.</param>
    /// <param name="placeHeight">Of half a place.</param>
    public static Finding Found(
        Span cell,
        string coloring,
        string size,
        Length width,
        Length height,
        Length placeWidth,
        Length placeHeight
    ) =>
        new(
            Instance.Report(
                cell,
                $"block \"{coloring}\" at the ends of staggered lines is not half of the others",
                "at the ends",
                hint: "give it the size of half a block, or name a plain coloring"
            ),
            size,
            $"\"{coloring}\" finishes {Wording.Measure(width, height)}, the half place {Wording.Measure(placeWidth, placeHeight)}"
        );
}
