using PatternPress.Source.Diagnostics;

namespace PatternPress.Source.Syntax;

/// <summary>
/// Puts a YAML syntax error into a designer's words. The scanner says what it was doing; this looks at the line to say
/// what was probably meant.
/// </summary>
internal static class SyntaxErrors
{
    public static Diagnostic Explain(
        SourceText source,
        int readable,
        int start,
        int end,
        string message
    )
    {
        var span = source.SpanOf(start, Math.Min(end, readable));
        return Diagnostic.Error(
            "PP0120",
            "this cannot be read as YAML",
            span,
            "reading stopped here",
            message
        );
    }
}
