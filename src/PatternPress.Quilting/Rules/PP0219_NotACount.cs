using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A count of columns and rows cannot be read.</summary>
public sealed class PP0219_NotACount : ReadingRule
{
    public static PP0219_NotACount Instance { get; } = new();

    private PP0219_NotACount()
        : base("PP0219", Severity.Error, "Not a count") { }

    /// <param name="what">What is counted: "blocks of size \"throw\"".</param>
    public static Diagnostic Found(Span span, string text, string what) =>
        Instance.Report(
            span,
            $"{what}: \"{text}\" is not a count across and down",
            "expected two whole numbers above zero",
            hint: "write the number across, x, the number down: 5 x 6"
        );

    /// <param name="what">What the number is for: "seed".</param>
    public static Diagnostic NotANumber(Span span, string text, string what) =>
        Instance.Report(
            span,
            $"{what}: \"{text}\" is not a whole number",
            "expected a whole number",
            hint: "write a number such as 7"
        );
}
