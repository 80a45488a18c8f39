using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>What is said of a border does not go together, or too little is said.</summary>
public sealed class PP0253_BorderKeysThatDisagree : ReadingRule
{
    public static PP0253_BorderKeysThatDisagree Instance { get; } = new();

    private PP0253_BorderKeysThatDisagree()
        : base("PP0253", Severity.Error, "Border whose keys disagree") { }

    /// <summary>A border of strips lacks its fabric or its width.</summary>
    /// <param name="missing">The key that is missing: "fabric".</param>
    public static Diagnostic Missing(Span border, string missing) =>
        Instance.Report(
            border,
            $"a border has no {missing}",
            "this border",
            "A border is made of strips, which have a width and a fabric, or of blocks.",
            missing == "fabric"
                ? "write its fabric (fabric: B), or the blocks along its sides (blocks: L1 L2)"
                : "write its finished width (width: 4), or those of the sides it has (sides: {top: 4, bottom: 6})"
        );

    /// <summary>A key has no place beside another.</summary>
    /// <param name="place">The key that has no place.</param>
    /// <param name="other">What it has no place beside: "blocks".</param>
    /// <param name="why">A sentence.</param>
    /// <param name="remedy">What to do.</param>
    public static Diagnostic Beside(
        Span place,
        string key,
        string other,
        string why,
        string remedy
    ) =>
        Instance.Report(
            place,
            $"{key} has no place in a border {other}",
            "in this border",
            why,
            remedy
        );

    /// <summary>A border of plain blocks only does not say how wide it is.</summary>
    public static Diagnostic WithoutWidth(Span blocks) =>
        Instance.Report(
            blocks,
            "a border of plain blocks has no width",
            "plain blocks have no size of their own",
            hint: "write the border's finished width (width: 3)"
        );
}
