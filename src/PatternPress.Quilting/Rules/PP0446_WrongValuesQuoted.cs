using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A quoted figure is given too few, too many or the wrong values.</summary>
public sealed class PP0446_WrongValuesQuoted : ReadingRule
{
    public static PP0446_WrongValuesQuoted Instance { get; } = new();

    private PP0446_WrongValuesQuoted()
        : base("PP0446", Severity.Error, "Wrong values quoted") { }

    /// <param name="remark">What was wrong, in words.</param>
    public static Diagnostic Found(Span span, string remark) =>
        Instance.Report(
            span,
            "a figure quoted in the text is given the wrong values",
            "too few or too many values",
            remark,
            "values stand in quotation marks: {{ yards \"A\" \"throw\" }}, {{ size \"throw\" }}"
        );
}
