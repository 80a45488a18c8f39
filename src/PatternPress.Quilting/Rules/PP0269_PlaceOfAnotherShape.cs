using PatternPress.Quilting.Measures;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A block is placed at a size of another shape than its own.</summary>
public sealed class PP0269_PlaceOfAnotherShape : ReadingRule
{
    public static PP0269_PlaceOfAnotherShape Instance { get; } = new();

    private PP0269_PlaceOfAnotherShape()
        : base("PP0269", Severity.Error, "Place of another shape") { }

    /// <param name="place">The line of the place.</param>
    /// <param name="width">Of the block, or its proportion.</param>
    /// <param name="height">Of the block, or its proportion.</param>
    /// <param name="placeWidth">As the line says, of the block before it is turned.</param>
    /// <param name="placeHeight">As the line says, of the block before it is turned.</param>
    public static Finding Found(
        Span place,
        string coloring,
        string size,
        Length width,
        Length height,
        Length placeWidth,
        Length placeHeight
    ) =>
        new(
            Instance.Report(
                place,
                $"the size given for \"{coloring}\" does not have the block's shape",
                "this place",
                hint: "give a size of the block's proportion, or leave the size out"
            ),
            size,
            $"the block is {LengthText.Inches(width)} wide to {LengthText.Inches(height)} high, the place {Wording.Measure(placeWidth, placeHeight)}"
        );
}
