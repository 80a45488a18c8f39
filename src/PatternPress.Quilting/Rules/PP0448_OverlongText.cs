using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A designer's text is too long or too deeply nested.</summary>
public sealed class PP0448_OverlongText : ReadingRule
{
    public static PP0448_OverlongText Instance { get; } = new();

    private PP0448_OverlongText()
        : base("PP0448", Severity.Error, "Overlong text") { }

    /// <param name="remark">Which limit, in words.</param>
    public static Diagnostic Found(Span span, string remark) =>
        Instance.Report(
            span,
            "a designer's text is too long or too deeply nested",
            "too much",
            remark,
            "shorten it, or divide it over several notes"
        );
}
