using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A designer's text holds more than quoted figures.</summary>
public sealed class PP0447_ProgramInText : ReadingRule
{
    public static PP0447_ProgramInText Instance { get; } = new();

    private PP0447_ProgramInText()
        : base("PP0447", Severity.Error, "Program in a text") { }

    /// <param name="what">What it holds: "a loop".</param>
    public static Diagnostic Found(Span span, string what) =>
        Instance.Report(
            span,
            $"a designer's text may quote figures, but not hold {what}",
            "not allowed here",
            hint: "quote figures only, as {{ yards \"A\" \"throw\" }}"
        );
}
