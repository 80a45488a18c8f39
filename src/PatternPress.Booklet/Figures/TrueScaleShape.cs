using System.Collections.Immutable;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>Something printed in true size: a template, a foundation, a shape to trace.</summary>
/// <param name="Name">What it is called: "T1".</param>
/// <param name="Told">What a sighted maker sees of it, a phrase: "quarter circle of unit 1".</param>
/// <param name="Width">On paper, in points: 72 to the inch.</param>
/// <param name="Height">On paper.</param>
/// <param name="Lines">What is drawn, from its upper left corner.</param>
/// <param name="Labels">What is written, apart from the lines, so that a shape may be divided between pages.</param>
internal sealed record TrueScaleShape(
    string Name,
    string Told,
    double Width,
    double Height,
    ImmutableArray<Mark> Lines,
    ImmutableArray<TrueScaleLabel> Labels
)
{
    /// <summary>Points for an inch.</summary>
    public const double Inch = 72;
}

/// <param name="At">Its middle.</param>
internal sealed record TrueScaleLabel(string Text, Spot At, Points Size, bool Bold)
{
    public Box Box => LabelSize.BoxAt(Text, At, Size.Value);
}
