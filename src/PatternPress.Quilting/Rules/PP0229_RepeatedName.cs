using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A name occurs twice in a list that should hold it once.</summary>
public sealed class PP0229_RepeatedName : ReadingRule
{
    public static PP0229_RepeatedName Instance { get; } = new();

    private PP0229_RepeatedName()
        : base("PP0229", Severity.Error, "Repeated name") { }

    /// <param name="second">Its second occurrence.</param>
    /// <param name="list">Where it is repeated: "the parts of block \"lamp\"", "coloring \"L1\"".</param>
    public static Diagnostic Found(Span second, string name, string list, Span first) =>
        Instance.Report(
            second,
            $"{list} has \"{name}\" twice",
            "the second time",
            hint: "delete one, or was another name meant?",
            others: new Label(first, "the first time")
        );
}
