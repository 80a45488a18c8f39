using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A coloring names a block that does not exist.</summary>
public sealed class PP0209_ColoringOfUnknownBlock : ReadingRule
{
    public static PP0209_ColoringOfUnknownBlock Instance { get; } = new();

    private PP0209_ColoringOfUnknownBlock()
        : base("PP0209", Severity.Error, "Coloring of an unknown block") { }

    public static Diagnostic Found(
        Span block,
        string name,
        string coloring,
        IEnumerable<string> blocks
    ) =>
        Instance.Report(
            block,
            $"coloring \"{coloring}\" is for a block \"{name}\" that does not exist",
            "no such block",
            hint: Wording.DidYouMean(name, blocks, "blocks")
        );
}
