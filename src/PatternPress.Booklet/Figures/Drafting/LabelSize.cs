using System.Buffers;

namespace PatternPress.Booklet.Figures.Drafting;

/// <summary>
/// How much room a label takes. Figures are pure functions without a font at hand, so widths are those of a wide
/// sans-serif: a label is never larger in print than it is thought to be here.
/// </summary>
internal static class LabelSize
{
    /// <summary>Height of capitals and figures as a share of the type size.</summary>
    public const double Capital = 0.73;

    /// <summary>How far letters such as g and p reach below the baseline.</summary>
    public const double Descent = 0.22;

    private static readonly SearchValues<char> Descending = SearchValues.Create("gjpqy,;()/Q");

    /// <summary>Width in points.</summary>
    public static double Width(string text, double size)
    {
        double ems = 0;
        foreach (char c in text)
        {
            ems += WidthOf(c);
        }
        return ems * size;
    }

    /// <summary>
    /// The box of a label whose capitals are centered on a place.
    /// </summary>
    public static Box BoxAt(string text, Spot center, double size)
    {
        double width = Width(text, size),
            high = Capital * size,
            low = HasDescent(text) ? Descent * size : 0;
        return new(center.X - (width / 2), center.Y - (high / 2), width, high + low);
    }

    private static bool HasDescent(string text) => text.AsSpan().ContainsAny(Descending);

    // The widest of a sans-serif and a serif, regular and bold, that booklets are set in.
    private static double WidthOf(char c) =>
        c switch
        {
            'i' or 'j' or 'l' or '.' or ',' or ':' or ';' or '\'' or '|' or 'I' => 0.39,
            ' ' or '\u00a0' => 0.28,
            'f' or 't' or 'r' or '(' or ')' or '-' or '/' or '″' or '"' or '!' => 0.48,
            'm' or 'w' or 'M' or 'W' or '–' or '—' or '→' or '%' or '@' or '…' => 1.06,
            'O' or 'Q' => 0.82,
            >= 'A' and <= 'Z' or '&' => 0.78,
            >= '0' and <= '9' => 0.63,
            _ => 0.66,
        };
}
