using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A coloring gives a fabric to a part that its block does not have.</summary>
public sealed class PP0211_UnknownPartInColoring : ReadingRule
{
    public static PP0211_UnknownPartInColoring Instance { get; } = new();

    private PP0211_UnknownPartInColoring()
        : base("PP0211", Severity.Error, "Coloring of an unknown part") { }

    /// <param name="known">The block's parts.</param>
    public static Diagnostic Found(
        Span part,
        string name,
        string coloring,
        string block,
        IEnumerable<string> known
    ) =>
        Instance.Report(
            part,
            $"coloring \"{coloring}\" colors a part \"{name}\" that block \"{block}\" does not have",
            "not one of the block's parts",
            hint: Wording.DidYouMean(name, known, "parts")
        );
}
