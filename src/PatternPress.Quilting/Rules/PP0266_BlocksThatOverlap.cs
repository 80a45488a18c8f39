using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Two blocks placed freely lie over each other.</summary>
public sealed class PP0266_BlocksThatOverlap : ReadingRule
{
    public static PP0266_BlocksThatOverlap Instance { get; } = new();

    private PP0266_BlocksThatOverlap()
        : base("PP0266", Severity.Error, "Blocks that overlap") { }

    /// <param name="place">The line of the later block.</param>
    /// <param name="other">The line of the block before it.</param>
    /// <param name="shared">What both cover.</param>
    public static Finding Found(
        Span place,
        string coloring,
        Span other,
        string otherColoring,
        string size,
        Rect shared
    ) =>
        new(
            Instance.Report(
                place,
                $"\"{coloring}\" lies over \"{otherColoring}\"",
                "this block",
                hint: "move one of them, or make it smaller",
                others: new Label(other, "and this one")
            ),
            size,
            $"both cover {Wording.Measure(shared.Width, shared.Height)}, {LengthText.Inches(shared.X)} in from the left and {LengthText.Inches(shared.Y)} in from the top"
        );
}
