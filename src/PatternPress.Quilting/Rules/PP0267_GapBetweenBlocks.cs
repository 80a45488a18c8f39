using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Blocks placed freely leave a gap.</summary>
public sealed class PP0267_GapBetweenBlocks : ReadingRule
{
    public static PP0267_GapBetweenBlocks Instance { get; } = new();

    private PP0267_GapBetweenBlocks()
        : base("PP0267", Severity.Error, "Gap between blocks") { }

    /// <param name="places">Where all places stand.</param>
    /// <param name="gap">What no block covers.</param>
    public static Finding Found(Span places, string size, Rect gap) =>
        new(
            Instance.Report(
                places,
                "the blocks leave a gap",
                "these places",
                hint: "move a block there, or fill it with a plain one: P 6 x 12 at 24, 0"
            ),
            size,
            $"nothing covers {Wording.Measure(gap.Width, gap.Height)}, {LengthText.Inches(gap.X)} in from the left and {LengthText.Inches(gap.Y)} in from the top"
        );
}
