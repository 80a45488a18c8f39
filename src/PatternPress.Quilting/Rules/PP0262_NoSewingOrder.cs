using PatternPress.Quilting.Measures;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Blocks fill their field but cannot be sewn together with straight seams, not even with partial ones.</summary>
public sealed class PP0262_NoSewingOrder : ReadingRule
{
    public static PP0262_NoSewingOrder Instance { get; } = new();

    private PP0262_NoSewingOrder()
        : base("PP0262", Severity.Error, "Layout that cannot be sewn") { }

    /// <param name="fill">Where the layout is drawn.</param>
    /// <param name="colorings">Of the blocks among which no straight seam is found.</param>
    /// <param name="blocks">How many they are.</param>
    public static Finding Found(
        Span fill,
        string size,
        IReadOnlyList<string> colorings,
        int blocks,
        Length left,
        Length top,
        Length right,
        Length bottom
    ) =>
        new(
            Instance.Report(
                fill,
                $"no straight seam runs through blocks {Wording.Names(colorings)}, and they do not go around a middle",
                "this layout",
                hint: "move a block so that a seam runs from edge to edge, or four parts go around one, each flush with the next"
            ),
            size,
            $"{Wording.Count(blocks, "block", "blocks")} between {LengthText.Inches(left)} and {LengthText.Inches(right)} in from the left, {LengthText.Inches(top)} and {LengthText.Inches(bottom)} in from the top"
        );
}
