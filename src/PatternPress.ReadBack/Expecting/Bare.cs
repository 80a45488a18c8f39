using System.Text;

namespace PatternPress.ReadBack.Expecting;

/// <summary>
/// Words without what lines and styles change: blanks of all kinds, places where words may be divided, and case (a style
/// may set capitals). A fraction that the font has a sign for is the same as one in plain characters.
/// </summary>
internal static class Bare
{
    private const string Signs = "½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚";

    private static readonly string[] _plain =
    [
        "1/2",
        "1/4",
        "3/4",
        "1/8",
        "3/8",
        "5/8",
        "7/8",
        "1/3",
        "2/3",
        "1/5",
        "2/5",
        "3/5",
        "4/5",
        "1/6",
        "5/6",
    ];

    public static string Of(string words)
    {
        var bare = new StringBuilder(words.Length);
        foreach (char c in words)
        {
            if (Signs.IndexOf(c, StringComparison.Ordinal) is >= 0 and var sign)
            {
                bare.Append(_plain[sign]);
            }
            else if (c == '⁄')
            {
                bare.Append('/');
            }
            else if (!IsNothing(c))
            {
                bare.Append(char.ToUpperInvariant(c));
            }
        }
        return bare.ToString();
    }

    public static bool IsNothing(char c) =>
        char.IsWhiteSpace(c)
        || c is '\u00ad' or '\u200b' or '\u200c' or '\u200d' or '\u2060' or '\ufeff';
}
