using PatternPress.Quilting.Measures;
using PatternPress.Source;

namespace PatternPress.Quilting.Rules.Prose;

/// <summary>
/// Finds the numbers in prose that mean yardage, a size or a count of blocks. Reads by hand: regular expressions would
/// cost more at start-up than all the rules together.
/// </summary>
internal static class ProseScanner
{
    private const string Vulgar = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";

    /// <param name="spanOf">The place of a stretch of the text: offset and length.</param>
    public static IEnumerable<TypedFigure> Scan(string text, Func<int, int, Span> spanOf)
    {
        int at = 0;
        while (at < text.Length)
        {
            if (text.AsSpan(at).StartsWith("{{"))
            {
                int end = text.IndexOf("}}", at, StringComparison.Ordinal);
                at = end < 0 ? text.Length : end + 2;
                continue;
            }
            if (text.AsSpan(at).StartsWith("](") || text.AsSpan(at).StartsWith("://"))
            {
                // The target of a link is no prose.
                while (at < text.Length && !char.IsWhiteSpace(text[at]) && text[at] != ')')
                {
                    at++;
                }
                continue;
            }
            if (!IsNumber(text[at]) || (at > 0 && IsPartOfAWord(text[at - 1])))
            {
                at++;
                continue;
            }
            int start = at;
            if (Figure(text, ref at) is { } figure)
            {
                string typed = text[start..at].ReplaceLineEndings(" ");
                yield return figure with
                {
                    Text = typed,
                    Span = spanOf(start, at - start),
                };
            }
            else if (at == start)
            {
                at++;
            }
        }
    }

    // Leaves `at` behind the figure, or behind the number where it means nothing here.
    private static TypedFigure? Figure(string text, ref int at)
    {
        if (Number(text, ref at) is not { } first)
        {
            return null;
        }
        int after = at;
        SkipInches(text, ref after);
        SkipBlanks(text, ref after);
        Rational? second = null;
        if (
            after < text.Length
            && text[after] is 'x' or 'X' or '×'
            && NextNumber(text, after + 1) is { } next
        )
        {
            second = next.Value;
            at = next.End;
        }
        int behind = at;
        string word = Word(text, ref behind);
        if (second is not null)
        {
            if (IsBlocks(word))
            {
                at = behind;
                return Of(TypedFigureKind.BlockGrid, first, second);
            }
            if (IsInches(word))
            {
                at = behind;
            }
            return Of(TypedFigureKind.Pair, first, second);
        }
        if (word is "yard" or "yards" or "yd" or "yds")
        {
            at = behind;
            return Of(TypedFigureKind.Yards, first, null);
        }
        if (IsBlocks(word))
        {
            at = behind;
            return Of(TypedFigureKind.BlockCount, first, null);
        }
        if (IsInches(word))
        {
            int further = behind;
            if (IsBlocks(Word(text, ref further)))
            {
                at = further;
                return Of(TypedFigureKind.BlockSize, first, null);
            }
        }
        return null;
    }

    private static TypedFigure Of(TypedFigureKind kind, Rational first, Rational? second) =>
        new(kind, "", first, second, Span.None);

    // "3", "3.5", "3 1/2", "3½", "1/2". A number that goes on with a letter ("2nd") is none.
    private static Rational? Number(string text, ref int at)
    {
        int end = at;
        while (end < text.Length && (IsNumber(text[end]) || IsInside(text, end)))
        {
            end++;
        }
        int mixed = end;
        if (end < text.Length && text[end] == ' ')
        {
            int bar = end + 1;
            while (bar < text.Length && char.IsAsciiDigit(text[bar]))
            {
                bar++;
            }
            if (
                bar > end + 1
                && bar + 1 < text.Length
                && text[bar] is '/' or '⁄'
                && char.IsAsciiDigit(text[bar + 1])
            )
            {
                mixed = bar + 1;
                while (mixed < text.Length && char.IsAsciiDigit(text[mixed]))
                {
                    mixed++;
                }
            }
        }
        foreach (int stop in new[] { mixed, end })
        {
            if (LengthText.TryParseNumber(text[at..stop], out Rational value, out _))
            {
                at = stop;
                return value;
            }
        }
        at = end;
        return null;
    }

    private static (Rational Value, int End)? NextNumber(string text, int at)
    {
        SkipBlanks(text, ref at);
        return at < text.Length && IsNumber(text[at]) && Number(text, ref at) is { } value
            ? (value, at)
            : null;
    }

    /// <summary>The next word behind blanks or a hyphen, in lower case; inch signs count as a word.</summary>
    private static string Word(string text, ref int at)
    {
        SkipBlanks(text, ref at);
        if (at < text.Length && text[at] is '"' or '″' or '”')
        {
            at++;
            return "in";
        }
        int start = at;
        while (at < text.Length && char.IsLetter(text[at]))
        {
            at++;
        }
        return text[start..at].ToLowerInvariant();
    }

    private static void SkipInches(string text, ref int at)
    {
        int behind = at;
        if (IsInches(Word(text, ref behind)))
        {
            at = behind;
        }
    }

    private static void SkipBlanks(string text, ref int at)
    {
        while (at < text.Length && (char.IsWhiteSpace(text[at]) || text[at] is '-' or '‑'))
        {
            at++;
        }
    }

    private static bool IsInches(string word) => word is "in" or "inch" or "inches";

    private static bool IsBlocks(string word) => word is "block" or "blocks";

    private static bool IsNumber(char c) => char.IsAsciiDigit(c) || Vulgar.Contains(c);

    private static bool IsInside(string text, int at) =>
        text[at] is '.' or '/' or '⁄' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1]);

    private static bool IsPartOfAWord(char c) =>
        char.IsLetterOrDigit(c) || c is '#' or '.' or '/' or '_' or '&';
}
