using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A text that the booklet needs is not among the templates.</summary>
public sealed class PP0455_MissingTemplate : ReadingRule
{
    public static PP0455_MissingTemplate Instance { get; } = new();

    private PP0455_MissingTemplate()
        : base("PP0455", Severity.Error, "Missing template") { }

    /// <param name="name">The text's name.</param>
    public static Diagnostic Found(string name) =>
        Instance.Report(
            Span.None,
            $"the text \"{name}\" is missing from the templates",
            "missing",
            hint: $"put {name}.md back into the language's folder in templates"
        );
}
