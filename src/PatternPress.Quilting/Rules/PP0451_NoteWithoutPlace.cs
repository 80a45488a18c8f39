using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A note is meant for a place that the booklet does not have.</summary>
public sealed class PP0451_NoteWithoutPlace : ReadingRule
{
    public static PP0451_NoteWithoutPlace Instance { get; } = new();

    private PP0451_NoteWithoutPlace()
        : base("PP0451", Severity.Warning, "Note without a place") { }

    public static Diagnostic Found(Span span, string place, IEnumerable<string> known) =>
        Instance.Report(
            span,
            $"the note \"{place}\" has no place in the booklet and is not printed",
            "no such place",
            hint: Wording.DidYouMean(place, known, "places")
        );
}
