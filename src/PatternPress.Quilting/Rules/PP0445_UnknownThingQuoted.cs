using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A designer's text quotes a block, coloring, unit, piece or section that there is not.</summary>
public sealed class PP0445_UnknownThingQuoted : ReadingRule
{
    public static PP0445_UnknownThingQuoted Instance { get; } = new();

    private PP0445_UnknownThingQuoted()
        : base("PP0445", Severity.Error, "Unknown thing quoted") { }

    public static Diagnostic Found(Span span, string key, IEnumerable<string> known) =>
        Instance.Report(
            span,
            $"the text quotes \"{key}\", which is no block, coloring, unit, piece or section",
            "nothing of this name",
            hint: Wording.DidYouMean(key, known, "names")
        );
}
