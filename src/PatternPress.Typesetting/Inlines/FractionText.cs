using System.Collections.Immutable;
using System.Text;

namespace PatternPress.Typesetting.Inlines;

/// <summary>Finds the fractions and measures in a line of text.</summary>
public static class FractionText
{
    const char NoBreakSpace = '\u00A0';
    const string Ready = "½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚";
    static readonly (int Numerator, int Denominator)[] ReadyParts =
    [
        (1, 2),
        (1, 4),
        (3, 4),
        (1, 8),
        (3, 8),
        (5, 8),
        (7, 8),
        (1, 3),
        (2, 3),
        (1, 5),
        (2, 5),
        (3, 5),
        (4, 5),
        (1, 6),
        (5, 6),
    ];

    static readonly string[] Units =
    [
        "in",
        "inch",
        "inches",
        "ft",
        "yd",
        "yds",
        "yard",
        "yards",
        "cm",
        "mm",
        "m",
        "pt",
        "″",
        "\"",
        "′",
        "×",
        "x",
        "%",
    ];

    /// <summary>The one character that shows a fraction, such as ½; none where Unicode has no such character.</summary>
    internal static char? SingleCharacter(int numerator, int denominator)
    {
        var place = Array.IndexOf(ReadyParts, (numerator, denominator));
        return place < 0 ? null : Ready[place];
    }

    /// <summary>
    /// Turns "cut 12 1/2 in wide" into words and a fraction. A space between a number and a unit or × after it becomes a
    /// no-break space. What merely looks like a fraction, as a date (1/2/26) or a part of a word, stays as it is.
    /// </summary>
    /// <param name="style">The style of all pieces.</param>
    /// <param name="link">The link of all pieces.</param>
    public static ImmutableArray<Inline> Parse(
        string text,
        InlineStyle? style = null,
        LinkTarget? link = null
    )
    {
        var pieces = ImmutableArray.CreateBuilder<Inline>();
        var words = new StringBuilder();
        var look = style ?? InlineStyle.Plain;
        for (var i = 0; i < text.Length; )
        {
            if (StartsNumber(text, i) && ReadFraction(text, i) is var (fraction, end))
            {
                Flush();
                pieces.Add(fraction with { Style = look, Link = link });
                i = end;
                i = JoinUnit(text, i, words);
            }
            else if (StartsNumber(text, i))
            {
                var end2 = EndOfNumber(text, i);
                words.Append(text, i, end2 - i);
                i = JoinUnit(text, end2, words);
            }
            else
            {
                words.Append(text[i++]);
            }
        }

        Flush();
        return pieces.DrainToImmutable();

        void Flush()
        {
            if (words.Length > 0)
            {
                pieces.Add(new Run(words.ToString()) { Style = look, Link = link });
                words.Clear();
            }
        }
    }

    /// <summary>The characters of some pieces, fractions written as 12 1/2 and page numbers left out.</summary>
    public static string Plain(ImmutableArray<Inline> pieces)
    {
        var text = new StringBuilder();
        foreach (var piece in pieces)
        {
            text.Append(
                piece switch
                {
                    Run run => run
                        .Text.Replace(NoBreakSpace, ' ')
                        .Replace("\u00AD", "", StringComparison.Ordinal),
                    Fraction fraction => fraction.Plain,
                    LineBreak => " ",
                    InlineDrawing drawing => drawing.Alt,
                    _ => "",
                }
            );
        }

        return text.ToString();
    }

    static bool StartsNumber(string text, int at) =>
        (char.IsAsciiDigit(text[at]) || Ready.Contains(text[at]))
        && (
            at == 0
            || !(char.IsLetterOrDigit(text[at - 1]) || text[at - 1] is '/' or '.' or '_' or ',')
        );

    // The end of digits with points and commas inside: 12, 1,250, 12.5, 4.
    static int EndOfNumber(string text, int at)
    {
        var end = at;
        while (
            end < text.Length
            && (
                char.IsAsciiDigit(text[end])
                || Ready.Contains(text[end])
                || (
                    text[end] is '.' or ','
                    && end + 1 < text.Length
                    && char.IsAsciiDigit(text[end + 1])
                )
            )
        )
        {
            end++;
        }

        return end;
    }

    static (Fraction Fraction, int End)? ReadFraction(string text, int at)
    {
        var end = at;
        while (end < text.Length && char.IsAsciiDigit(text[end]))
        {
            end++;
        }

        var first = text[at..end];
        // 12½ or ½
        if (
            end < text.Length
            && Ready.IndexOf(text[end]) is >= 0 and var ready
            && Ends(text, end + 1)
        )
        {
            return (
                new Fraction(first, ReadyParts[ready].Numerator, ReadyParts[ready].Denominator),
                end + 1
            );
        }

        // 1/2
        if (first.Length > 0 && ReadQuotient(text, at) is var (numerator, denominator, after))
        {
            return (new Fraction("", numerator, denominator), after);
        }

        // 12 1/2, 12-1/2
        if (
            first.Length > 0
            && end + 1 < text.Length
            && text[end] is ' ' or NoBreakSpace or '-'
            && char.IsAsciiDigit(text[end + 1])
            && ReadQuotient(text, end + 1) is var (part, of, stop)
            && part < of
        )
        {
            return (new Fraction(first, part, of), stop);
        }

        return null;
    }

    static (int Numerator, int Denominator, int End)? ReadQuotient(string text, int at)
    {
        var slash = at;
        while (slash < text.Length && char.IsAsciiDigit(text[slash]))
        {
            slash++;
        }

        if (
            slash == at
            || slash - at > 3
            || slash >= text.Length
            || text[slash] is not ('/' or '\u2044')
        )
        {
            return null;
        }

        var end = slash + 1;
        while (end < text.Length && char.IsAsciiDigit(text[end]))
        {
            end++;
        }

        return end == slash + 1 || end - slash > 4 || !Ends(text, end) || text[slash + 1] == '0'
            ? null
            : (
                int.Parse(text.AsSpan(at, slash - at)),
                int.Parse(text.AsSpan(slash + 1, end - slash - 1)),
                end
            );
    }

    // Whether a number may end here: not inside a date such as 1/2/26, nor inside a word, nor before decimals.
    static bool Ends(string text, int at) =>
        at >= text.Length
        || !(
            char.IsLetterOrDigit(text[at])
            || text[at] == '/'
            || (text[at] == '.' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1]))
        );

    // Replaces the space between a number and a unit; returns where to go on.
    static int JoinUnit(string text, int at, StringBuilder words)
    {
        if (at + 1 >= text.Length || text[at] is not (' ' or NoBreakSpace))
        {
            return at;
        }

        foreach (var unit in Units)
        {
            if (
                string.CompareOrdinal(text, at + 1, unit, 0, unit.Length) == 0
                && (
                    at + 1 + unit.Length == text.Length
                    || !char.IsLetterOrDigit(text[at + 1 + unit.Length])
                )
            )
            {
                words.Append(NoBreakSpace);
                return at + 1;
            }
        }

        return at;
    }
}
