using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A letter in a block's map has no unit.</summary>
public sealed class PP0202_LetterWithoutUnit : ReadingRule
{
    public static PP0202_LetterWithoutUnit Instance { get; } = new();

    private PP0202_LetterWithoutUnit()
        : base("PP0202", Severity.Error, "Map letter without a unit") { }

    /// <param name="cell">The first cell with that letter.</param>
    /// <param name="letters">The letters that do have a unit.</param>
    public static Diagnostic Found(
        Span cell,
        string letter,
        string block,
        IEnumerable<string> letters
    ) =>
        Instance.Report(
            cell,
            $"letter \"{letter}\" in the map of block \"{block}\" has no unit",
            "no unit stands behind this letter",
            hint: $"add \"{letter}:\" under units, or {Wording.DidYouMean(letter, letters, "letters")}"
        );
}
