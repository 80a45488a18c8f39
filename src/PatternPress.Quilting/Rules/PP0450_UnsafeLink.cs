using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A designer's text links to something that is not on the web.</summary>
public sealed class PP0450_UnsafeLink : ReadingRule
{
    public static PP0450_UnsafeLink Instance { get; } = new();

    private PP0450_UnsafeLink()
        : base("PP0450", Severity.Warning, "Unsafe link") { }

    /// <param name="address">Where the link leads.</param>
    public static Diagnostic Found(Span span, string address) =>
        Instance.Report(
            span,
            $"the link to \"{address}\" is printed without its address",
            "not a web address",
            hint: "write the whole address: https://…"
        );
}
