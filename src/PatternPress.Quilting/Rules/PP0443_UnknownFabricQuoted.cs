using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A designer's text quotes a figure of a fabric that is not used.</summary>
public sealed class PP0443_UnknownFabricQuoted : ReadingRule
{
    public static PP0443_UnknownFabricQuoted Instance { get; } = new();

    private PP0443_UnknownFabricQuoted()
        : base("PP0443", Severity.Error, "Unknown fabric quoted") { }

    public static Diagnostic Found(Span span, string key, IEnumerable<string> fabrics) =>
        Instance.Report(
            span,
            $"the text quotes fabric \"{key}\", which the quilt does not use",
            "no such fabric",
            hint: Wording.DidYouMean(key, fabrics, "fabrics")
        );
}
