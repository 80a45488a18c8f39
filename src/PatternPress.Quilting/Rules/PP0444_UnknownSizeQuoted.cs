using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A designer's text quotes a figure of a size that the pattern does not have.</summary>
public sealed class PP0444_UnknownSizeQuoted : ReadingRule
{
    public static PP0444_UnknownSizeQuoted Instance { get; } = new();

    private PP0444_UnknownSizeQuoted()
        : base("PP0444", Severity.Error, "Unknown size quoted") { }

    public static Diagnostic Found(Span span, string key, IEnumerable<string> sizes) =>
        Instance.Report(
            span,
            $"the text quotes size \"{key}\", which the pattern does not have",
            "no such size",
            hint: Wording.DidYouMean(key, sizes, "sizes")
        );
}
