using PatternPress.Quilting.Measures;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A block set on point is not square.</summary>
public sealed class PP0244_OblongBlockOnPoint : ReadingRule
{
    public static PP0244_OblongBlockOnPoint Instance { get; } = new();

    private PP0244_OblongBlockOnPoint()
        : base("PP0244", Severity.Error, "Oblong block on point") { }

    /// <param name="place">Where the fill uses it.</param>
    public static Finding Found(
        Span place,
        string coloring,
        Length width,
        Length height,
        string size
    ) =>
        new(
            Instance.Report(
                place,
                $"block \"{coloring}\" is not square, so its rows on point end in no straight edge",
                "set on point",
                hint: "give the block a square size, or set it straight"
            ),
            size,
            $"\"{coloring}\" finishes {Wording.Measure(width, height)}"
        );
}
