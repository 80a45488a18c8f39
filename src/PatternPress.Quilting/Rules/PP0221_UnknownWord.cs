using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A word that must be one of a few is none of them.</summary>
public sealed class PP0221_UnknownWord : ReadingRule
{
    public static PP0221_UnknownWord Instance { get; } = new();

    private PP0221_UnknownWord()
        : base("PP0221", Severity.Error, "Unknown word") { }

    /// <param name="what">What the word chooses: "setting", "way to fill", "corners of border 1".</param>
    /// <param name="known">The words there are.</param>
    public static Diagnostic Found(
        Span span,
        string word,
        string what,
        IEnumerable<string> known
    ) =>
        Instance.Report(
            span,
            $"\"{word}\" is not a {what}",
            $"no such {what}",
            hint: Wording.DidYouMean(word, known, "words")
        );
}
