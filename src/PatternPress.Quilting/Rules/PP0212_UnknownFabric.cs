using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A fabric is named that is not defined.</summary>
public sealed class PP0212_UnknownFabric : ReadingRule
{
    public static PP0212_UnknownFabric Instance { get; } = new();

    private PP0212_UnknownFabric()
        : base("PP0212", Severity.Error, "Unknown fabric") { }

    /// <param name="use">What wants the fabric: "coloring \"L1\"", "border 2", "the binding".</param>
    /// <param name="fabrics">The defined keys.</param>
    /// <param name="called">The key of the fabric whose full name it is; null for none.</param>
    public static Diagnostic Found(
        Span fabric,
        string key,
        string use,
        IEnumerable<string> fabrics,
        string? called = null
    ) =>
        Instance.Report(
            fabric,
            $"{use} uses fabric \"{key}\", which is not defined",
            "no such fabric",
            hint: called is not null
                ? $"fabric \"{called}\" is called {key}: write {called}"
                : Wording.DidYouMean(key, fabrics, "fabrics")
        );
}
