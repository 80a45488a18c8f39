using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A line of a foundation section says no piece.</summary>
public sealed class PP0271_UnreadableSection : ReadingRule
{
    public static PP0271_UnreadableSection Instance { get; } = new();

    private PP0271_UnreadableSection()
        : base("PP0271", Severity.Error, "Unreadable foundation section") { }

    /// <param name="place">The line.</param>
    /// <param name="problem">What is wrong with it.</param>
    public static Diagnostic Found(Span place, string section, string problem, string hint) =>
        Instance.Report(
            place,
            $"a line of foundation section \"{section}\" cannot be read",
            problem,
            hint: hint
        );
}
