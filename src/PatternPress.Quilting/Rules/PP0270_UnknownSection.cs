using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A unit names a foundation section that is not drawn.</summary>
public sealed class PP0270_UnknownSection : ReadingRule
{
    public static PP0270_UnknownSection Instance { get; } = new();

    private PP0270_UnknownSection()
        : base("PP0270", Severity.Error, "Unknown foundation section") { }

    /// <param name="place">The name.</param>
    /// <param name="known">Names of the sections there are.</param>
    public static Diagnostic Found(Span place, string name, IEnumerable<string> known) =>
        Instance.Report(
            place,
            $"there is no foundation section \"{name}\"",
            "no section of that name",
            hint: Nearest.To(name, [.. known]) is { } near
                ? $"did you mean {near}?"
                : "draw it under foundations"
        );
}
