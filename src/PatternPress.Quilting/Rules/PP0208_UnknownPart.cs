using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A unit uses a part that its block does not list.</summary>
public sealed class PP0208_UnknownPart : ReadingRule
{
    public static PP0208_UnknownPart Instance { get; } = new();

    private PP0208_UnknownPart()
        : base("PP0208", Severity.Error, "Unknown part") { }

    /// <param name="part">Where the part is used.</param>
    /// <param name="known">The block's parts.</param>
    /// <param name="parts">Where the block lists its parts.</param>
    public static Diagnostic Found(
        Span part,
        string name,
        string block,
        IEnumerable<string> known,
        Span parts
    ) =>
        Instance.Report(
            part,
            $"block \"{block}\" has no part \"{name}\"",
            "not one of the block's parts",
            hint: $"{Wording.DidYouMean(name, known, "parts")} (a new part is added to the list)",
            others: new Label(parts, "the block's parts")
        );
}
