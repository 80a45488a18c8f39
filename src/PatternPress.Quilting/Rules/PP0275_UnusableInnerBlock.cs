using PatternPress.Quilting.Measures;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A block inside a block is not there, is the block itself, has other parts or another shape.</summary>
public sealed class PP0275_UnusableInnerBlock : ReadingRule
{
    public static PP0275_UnusableInnerBlock Instance { get; } = new();

    private PP0275_UnusableInnerBlock()
        : base("PP0275", Severity.Error, "Inner block that cannot be used") { }

    public static Diagnostic WithoutName(Span unit, string letter, string block) =>
        Instance.Report(
            unit,
            $"unit \"{letter}\" of block \"{block}\" is a block and does not say which",
            "no name here",
            hint: "name it: block star, or with its parts: block star, ray=sky core=water"
        );

    public static Diagnostic Unknown(
        Span name,
        string inner,
        string block,
        IEnumerable<string> blocks
    ) =>
        Instance.Report(
            name,
            $"block \"{block}\" has a block \"{inner}\" inside, and there is none of that name",
            "not under blocks",
            hint: Wording.DidYouMean(inner, blocks, "blocks")
        );

    public static Diagnostic Itself(Span name, string inner, string block) =>
        Instance.Report(
            name,
            inner == block
                ? $"block \"{block}\" has itself inside"
                : $"block \"{inner}\" is inside block \"{block}\" and has it inside too",
            "leads back to itself",
            hint: "use another block here"
        );

    public static Diagnostic UnknownPart(
        Span word,
        string part,
        string inner,
        string block,
        IEnumerable<string> parts
    ) =>
        Instance.Report(
            word,
            $"\"{part}\" is no part of block \"{inner}\", which is inside block \"{block}\"",
            "not a part of it",
            hint: $"write the inner block's part, =, the outer one's: ray=sky; {Wording.DidYouMean(part, parts, "parts")}"
        );

    public static Diagnostic AnotherShape(
        Span region,
        string inner,
        string block,
        Length width,
        Length height,
        Length regionWidth,
        Length regionHeight
    ) =>
        Instance.Report(
            region,
            $"block \"{inner}\" does not have the shape of its region in block \"{block}\": {LengthText.Inches(width)} wide to {LengthText.Inches(height)} high, the region {LengthText.Inches(regionWidth)} to {LengthText.Inches(regionHeight)}",
            "its region",
            hint: "draw a region of the inner block's proportion"
        );
}
