using PatternPress.Quilting.Techniques;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The words behind a unit's kind make no sense for that kind.</summary>
public sealed class PP0206_UnitWordsWithoutMeaning : ReadingRule
{
    public static PP0206_UnitWordsWithoutMeaning Instance { get; } = new();

    private PP0206_UnitWordsWithoutMeaning()
        : base("PP0206", Severity.Error, "Unit words without a meaning") { }

    /// <param name="problem">What the kind of unit objects to.</param>
    public static Diagnostic Found(UnitProblem problem, string letter, string block) =>
        Instance.Report(
            problem.Span,
            problem.Title,
            $"unit \"{letter}\" of block \"{block}\"",
            problem.Text,
            problem.Hint
        );
}
