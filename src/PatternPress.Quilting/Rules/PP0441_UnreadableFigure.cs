using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>What stands between {{ and }} in a designer's text cannot be read.</summary>
public sealed class PP0441_UnreadableFigure : ReadingRule
{
    public static PP0441_UnreadableFigure Instance { get; } = new();

    private PP0441_UnreadableFigure()
        : base("PP0441", Severity.Error, "Unreadable figure") { }

    /// <param name="remark">The template language's remark.</param>
    public static Diagnostic Found(Span span, string remark) =>
        Instance.Report(
            span,
            "a figure quoted in the text cannot be read",
            "not readable",
            remark,
            "write {{ yards \"A\" \"throw\" }}: a name, then values in quotation marks"
        );
}
