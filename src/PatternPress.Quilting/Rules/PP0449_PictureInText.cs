using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A designer's text holds a picture.</summary>
public sealed class PP0449_PictureInText : ReadingRule
{
    public static PP0449_PictureInText Instance { get; } = new();

    private PP0449_PictureInText()
        : base("PP0449", Severity.Warning, "Picture in a text") { }

    /// <param name="address">What the text points to.</param>
    public static Diagnostic Found(Span span, string address) =>
        Instance.Report(
            span,
            $"the picture \"{address}\" is left out",
            "pictures cannot stand in a text",
            "Only the booklet's own diagrams are printed: they are drawn from the pattern."
        );
}
