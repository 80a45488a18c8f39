using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Two keys look alike in print.</summary>
public sealed class PP0228_LookalikeKeys : ReadingRule
{
    public static PP0228_LookalikeKeys Instance { get; } = new();

    private PP0228_LookalikeKeys()
        : base("PP0228", Severity.Warning, "Keys that look alike") { }

    /// <param name="key">The later of the two.</param>
    /// <param name="what">What they name, plural: "fabrics".</param>
    public static Diagnostic Found(
        Span key,
        string name,
        Span other,
        string otherName,
        string what
    ) =>
        Instance.Report(
            key,
            $"the {what} keys \"{otherName}\" and \"{name}\" are easily taken for each other",
            "looks like the other",
            "Makers read these letters from small labels in the diagrams.",
            "use another letter for one of them",
            new Label(other, "the other")
        );
}
