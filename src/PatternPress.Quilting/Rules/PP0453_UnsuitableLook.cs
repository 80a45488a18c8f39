using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A value in templates/looks.yaml or among the labels cannot be used.</summary>
public sealed class PP0453_UnsuitableLook : ReadingRule
{
    public static PP0453_UnsuitableLook Instance { get; } = new();

    private PP0453_UnsuitableLook()
        : base("PP0453", Severity.Error, "Unsuitable look") { }

    /// <param name="wanted">What would be right, with its article: "a color of the form #rrggbb".</param>
    public static Diagnostic Found(Span span, string value, string wanted) =>
        Instance.Report(
            span,
            $"\"{value}\" cannot be used here",
            $"wanted: {wanted}",
            hint: $"write {wanted}"
        );
}
