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
}
