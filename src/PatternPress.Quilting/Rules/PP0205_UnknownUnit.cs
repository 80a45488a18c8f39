using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A unit's first word names no kind of unit.</summary>
public sealed class PP0205_UnknownUnit : ReadingRule
{
    public static PP0205_UnknownUnit Instance { get; } = new();

    private PP0205_UnknownUnit()
        : base("PP0205", Severity.Error, "Unknown kind of unit") { }

    /// <param name="known">Keywords of all kinds.</param>
    public static Diagnostic Found(Span word, string keyword, IEnumerable<string> known) =>
        Instance.Report(
            word,
            $"\"{keyword}\" is not a kind of unit",
            "no such unit",
            hint: Wording.DidYouMean(keyword, known, "kinds of unit")
        );
}
