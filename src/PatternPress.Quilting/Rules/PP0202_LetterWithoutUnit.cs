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

    /// <summary>Letters without blanks between them.</summary>
    /// <param name="word">The first cell that is more than one letter.</param>
    /// <param name="apart">The same with blanks.</param>
    /// <param name="rows">In how many rows of the map there are such.</param>
    public static Diagnostic Together(
        Span word,
        string letters,
        string block,
        string apart,
        int rows
    ) =>
        Instance.Report(
            word,
            $"the letters \"{letters}\" in the map of block \"{block}\" stand together",
            "read as one letter",
            rows > 1 ? $"{rows} rows of the map have such." : "",
            $"put a blank between each two: {apart}"
        );
}
