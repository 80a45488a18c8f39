using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Neither a block nor the size of the quilt says how large the block is.</summary>
public sealed class PP0227_SizelessBlock : ReadingRule
{
    public static PP0227_SizelessBlock Instance { get; } = new();

    private PP0227_SizelessBlock()
        : base("PP0227", Severity.Error, "Block without a size") { }

    /// <param name="block">Where the block stands.</param>
    /// <param name="size">The size of the quilt that names no block size either; null if none does.</param>
    public static Finding Found(Span block, string key, string? size) =>
        new(
            Instance.Report(
                block,
                $"block \"{key}\" has no finished size",
                "no size here",
                hint: "give the block a finished size (size: 12), or the quilt's sizes a block size"
            ),
            size,
            size is null ? "" : "names no block size either"
        );

    /// <param name="place">The line that places it.</param>
    public static Finding Placed(Span place, string coloring, string size) =>
        new(
            Instance.Report(
                place,
                $"\"{coloring}\" is placed and has no finished size",
                "no size here",
                hint: "write its size before at: P 6 x 12 at 24, 0"
            ),
            size,
            ""
        );
}
