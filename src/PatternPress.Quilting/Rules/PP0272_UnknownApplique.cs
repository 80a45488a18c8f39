using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A unit names an appliqué that is not drawn.</summary>
public sealed class PP0272_UnknownApplique : ReadingRule
{
    public static PP0272_UnknownApplique Instance { get; } = new();

    private PP0272_UnknownApplique()
        : base("PP0272", Severity.Error, "Unknown appliqué") { }

    /// <param name="place">The name.</param>
    /// <param name="known">Names of those there are.</param>
    public static Diagnostic Found(Span place, string name, IEnumerable<string> known) =>
        Instance.Report(
            place,
            $"there is no appliqué \"{name}\"",
            "no appliqué of that name",
            hint: Nearest.To(name, [.. known]) is { } near
                ? $"did you mean {near}?"
                : "draw it under appliques"
        );
}
