using PatternPress.Quilting.Settings.Fills;
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
    /// <param name="colorings">The colorings there are.</param>
    /// <param name="isBlock">Whether a block has that name.</param>
    public static Diagnostic Found(
        Span cell,
        string name,
        IReadOnlyList<string> colorings,
        bool isBlock = false
    ) =>
        Instance.Report(
            cell,
            $"the fill names a coloring \"{name}\" that does not exist",
            isBlock ? "a block, not a coloring of it" : "no such coloring",
            hint: isBlock
                    ? $"give it a coloring under colorings, such as {FreeName(colorings)}: {name} …, and write that here"
                : FillCatalog.Find(name) is not null
                    ? $"a way of filling stands in braces: fill: {{{name}: {string.Join(' ', colorings.Take(2))}}}"
                : Wording.Apart(name, colorings) is { } apart ? $"put blanks between them: {apart}"
                : Wording.DidYouMean(name, colorings, "colorings")
        );

    private static string FreeName(IReadOnlyList<string> taken)
    {
        int number = 1;
        while (taken.Contains($"L{number}"))
        {
            number++;
        }
        return $"L{number}";
    }
}
