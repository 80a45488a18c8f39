using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The outline of an appliqué shape is no path data, or none of one closed shape.</summary>
public sealed class PP0273_UnreadablePath : ReadingRule
{
    public static PP0273_UnreadablePath Instance { get; } = new();

    private PP0273_UnreadablePath()
        : base("PP0273", Severity.Error, "Unreadable outline") { }

    /// <param name="place">Where it breaks off.</param>
    /// <param name="problem">What is wrong with it.</param>
    public static Diagnostic Found(Span place, string applique, string problem, string hint) =>
        Instance.Report(
            place,
            $"an outline of appliqué \"{applique}\" cannot be read",
            problem,
            hint: hint
        );
}
