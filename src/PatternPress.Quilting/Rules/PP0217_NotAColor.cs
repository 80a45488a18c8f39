using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A fabric's color cannot be read.</summary>
public sealed class PP0217_NotAColor : ReadingRule
{
    public static PP0217_NotAColor Instance { get; } = new();

    private PP0217_NotAColor()
        : base("PP0217", Severity.Error, "Not a color") { }

    /// <param name="text">As written; empty where an unquoted # made it a comment.</param>
    public static Diagnostic Found(Span span, string text, string fabric) =>
        Instance.Report(
            span,
            text.Length == 0 ? $"fabric \"{fabric}\" has no color" : $"\"{text}\" is not a color",
            "expected six hexadecimal digits",
            text.Length == 0 ? "In YAML an unquoted # starts a comment." : "",
            "write red, green and blue in quotes: \"#15233b\""
        );
}
