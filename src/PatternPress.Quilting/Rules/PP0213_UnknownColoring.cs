using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A fill names a coloring that does not exist.</summary>
public sealed class PP0213_UnknownColoring : ReadingRule
{
    public static PP0213_UnknownColoring Instance { get; } = new();

    private PP0213_UnknownColoring()
        : base("PP0213", Severity.Error, "Unknown coloring") { }

    /// <param name="cell">The first cell that names it.</param>
    public static Diagnostic Found(Span cell, string name, IEnumerable<string> colorings) =>
        Instance.Report(
            cell,
            $"the fill names a coloring \"{name}\" that does not exist",
            "no such coloring",
            hint: Wording.DidYouMean(name, colorings, "colorings")
        );
}
