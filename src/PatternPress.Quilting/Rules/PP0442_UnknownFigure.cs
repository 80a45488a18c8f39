using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A designer's text asks for a figure that there is not.</summary>
public sealed class PP0442_UnknownFigure : ReadingRule
{
    public static PP0442_UnknownFigure Instance { get; } = new();

    private PP0442_UnknownFigure()
        : base("PP0442", Severity.Error, "Unknown figure") { }

    public static Diagnostic Found(Span span, string name, IEnumerable<string> known) =>
        Instance.Report(
            span,
            $"there is no figure called \"{name}\"",
            "no such figure",
            hint: Wording.DidYouMean(name, known, "figures")
        );
}
