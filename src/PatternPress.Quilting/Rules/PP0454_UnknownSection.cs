using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>templates/documents.yaml lists a section that there is not.</summary>
public sealed class PP0454_UnknownSection : ReadingRule
{
    public static PP0454_UnknownSection Instance { get; } = new();

    private PP0454_UnknownSection()
        : base("PP0454", Severity.Error, "Unknown section") { }

    public static Diagnostic Found(Span span, string name, IEnumerable<string> known) =>
        Instance.Report(
            span,
            $"there is no section called \"{name}\"",
            "no such section",
            hint: Wording.DidYouMean(name, known, "sections")
        );
}
