using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The pattern's date cannot be read.</summary>
public sealed class PP0218_NotADate : ReadingRule
{
    public static PP0218_NotADate Instance { get; } = new();

    private PP0218_NotADate()
        : base("PP0218", Severity.Error, "Not a date") { }

    public static Diagnostic Found(Span span, string text) =>
        Instance.Report(
            span,
            $"there is no day \"{text}\"",
            "no such day",
            hint: "is the month or the day mistyped? The order is year-month-day"
        );
}
