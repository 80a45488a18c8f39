using PatternPress.Quilting.Measures;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Blocks of different sizes stand side by side in a straight setting.</summary>
public sealed class PP0223_UnequalBlocks : ReadingRule
{
    public static PP0223_UnequalBlocks Instance { get; } = new();

    private PP0223_UnequalBlocks()
        : base("PP0223", Severity.Error, "Blocks of unequal size in a straight setting") { }

    /// <param name="block">The block that differs.</param>
    /// <param name="other">The block it differs from.</param>
    /// <param name="size">The size's key.</param>
    public static Finding Found(
        Span block,
        string key,
        Length width,
        Length height,
        Span other,
        string otherKey,
        Length otherWidth,
        Length otherHeight,
        string? size
    ) =>
        new(
            Instance.Report(
                block,
                $"blocks \"{key}\" and \"{otherKey}\" differ in size, so their rows do not meet",
                "this block",
                hint: "give both blocks the same size, put the smaller one on a larger grid, or set the quilt in-sections",
                others: new Label(other, "and this one")
            ),
            size,
            $"\"{key}\" finishes {Wording.Measure(width, height)}, \"{otherKey}\" {Wording.Measure(otherWidth, otherHeight)}"
        );
}
