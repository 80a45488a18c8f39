using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A list has more or fewer entries than its purpose allows.</summary>
public sealed class PP0230_WrongNumberOfEntries : ReadingRule
{
    public static PP0230_WrongNumberOfEntries Instance { get; } = new();

    private PP0230_WrongNumberOfEntries()
        : base("PP0230", Severity.Error, "Wrong number of entries") { }

    /// <param name="what">What the list is for: "a checkerboard", "the pattern".</param>
    /// <param name="wanted">What is wanted, in words: "two colorings", "at least one size".</param>
    public static Diagnostic Found(Span list, string what, string wanted, int given) =>
        Instance.Report(list, $"{what} needs {wanted}, not {given}", $"{given} here");

    /// <param name="problem">What the way of filling objects to, with the numbers.</param>
    public static Diagnostic Found(Span list, string problem) =>
        Instance.Report(
            list,
            problem,
            "this list",
            hint: "change the list, or fill in another way"
        );
}
