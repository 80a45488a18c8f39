using PatternPress.Quilting.Measures;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The blocks of one border do not meet: they differ in height, their halves in length, or a corner block is not
/// square.</summary>
public sealed class PP0252_UnequalBorderBlocks : ReadingRule
{
    public static PP0252_UnequalBorderBlocks Instance { get; } = new();

    private PP0252_UnequalBorderBlocks()
        : base("PP0252", Severity.Error, "Border blocks that do not meet") { }

    /// <summary>A block is not as high as the border is wide.</summary>
    public static Finding Heights(Span block, string key, Length high, Length width, string size) =>
        new(
            Instance.Report(
                block,
                $"block \"{key}\" is not as high as its border is wide",
                "this block",
                hint: "give the border a width, and all its blocks are made to it (width: 3)"
            ),
            size,
            $"the block is {Wording.Measure(high)} high, the border {Wording.Measure(width)} wide"
        );

    /// <summary>What repeats before the middle and what repeats after it differ in length.</summary>
    public static Finding Halves(Span blocks, Length first, Length second, string size) =>
        new(
            Instance.Report(
                blocks,
                "the blocks before the middle and those after it differ in length",
                "this border",
                "A side has as many repeats on both sides of its middle.",
                "write as many blocks of the same length after the middle as before it"
            ),
            size,
            $"{Wording.Measure(first)} before the middle, {Wording.Measure(second)} after it"
        );

    /// <summary>A corner block is not square.</summary>
    public static Finding Corner(
        Span block,
        string key,
        Length width,
        Length height,
        string size
    ) =>
        new(
            Instance.Report(
                block,
                $"corner block \"{key}\" is not square",
                "this block",
                "A border is as wide at the sides as at the top, so what fills its corner is a square.",
                "choose a square block for the corners, or a square of fabric (corners: squares B)"
            ),
            size,
            $"made to the border's width it is {Wording.Measure(width, height)}"
        );
}
