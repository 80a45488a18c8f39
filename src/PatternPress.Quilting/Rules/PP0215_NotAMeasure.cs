using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A text that should be a measure is none.</summary>
public sealed class PP0215_NotAMeasure : ReadingRule
{
    public static PP0215_NotAMeasure Instance { get; } = new();

    private PP0215_NotAMeasure()
        : base("PP0215", Severity.Error, "Not a measure") { }

    /// <param name="what">What the measure is for: "width of border 1".</param>
    /// <param name="problem">What the measure reader objects to.</param>
    public static Diagnostic Found(Span span, string what, string problem) =>
        Instance.Report(
            span,
            $"{what}: {problem}",
            "expected a measure",
            hint: "write it as 12 1/2, 12½, 12.5, 12 1/2 in, 1/4 yd or 30 cm"
        );

    /// <summary>A share of a hundred that is none.</summary>
    public static Diagnostic NotPerCent(Span span, string what, string problem, int most) =>
        Instance.Report(
            span,
            $"{what}: {problem}",
            "expected per cent",
            hint: $"write a number from 0 to {most} and %, such as 5 %"
        );

    /// <summary>A measure whose fraction goes with the others' into no part of an inch that can be computed with.</summary>
    public static Diagnostic WithoutCommonPart(Span span, string what, string text) =>
        Instance.Report(
            span,
            $"{what}: \"{text}\" has no common part with the other measures",
            "an unlike fraction",
            "The measures of a pattern are computed exactly, and these fractions together are finer than can be computed with.",
            "write measures in the marks of a ruler: eighths or sixteenths of an inch, or tenths of a centimetre"
        );

    /// <summary>Measures or shares that together are finer than can be computed with; which one is not known.</summary>
    public static Diagnostic BeyondComputing(Span span) =>
        Instance.Report(
            span,
            "the measures of this pattern have no common part",
            "this pattern",
            "Its numbers are computed exactly; its fractions or the shares of its blocks' columns and rows together are finer than can be computed with.",
            "write measures in the marks of a ruler, and shares as small whole numbers"
        );
}
