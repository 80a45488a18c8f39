using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A coloring leaves parts of its block without a fabric.</summary>
public sealed class PP0210_UnboundPart : ReadingRule
{
    public static PP0210_UnboundPart Instance { get; } = new();

    private PP0210_UnboundPart()
        : base("PP0210", Severity.Error, "Part without a fabric") { }

    /// <param name="coloring">Where the coloring stands.</param>
    /// <param name="missing">The parts without a fabric.</param>
    /// <param name="parts">Where the block lists its parts.</param>
    public static Diagnostic Found(
        Span coloring,
        string name,
        string block,
        IReadOnlyCollection<string> missing,
        Span parts
    ) =>
        Instance.Report(
            coloring,
            $"coloring \"{name}\" gives no fabric to {(missing.Count == 1 ? "part" : "parts")} {Wording.Names(missing)} of block \"{block}\"",
            $"{string.Join(", ", missing.Select(m => $"{m}=?"))} missing",
            hint: $"add {string.Join(" ", missing.Select(m => $"{m}=…"))} with a fabric each",
            others: new Label(parts, "every part needs a fabric")
        );
}
