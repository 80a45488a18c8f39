using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Booklet.Sections;

/// <summary>
/// About how wide words will be on paper. Documents are composed before anything is measured; where a table must be parted
/// to stand on a narrow page, an estimate by the kinds of characters is near enough.
/// </summary>
internal static class WordWidths
{
    private const double Bold = 1.05;
    private const double NumeralsOfFraction = 0.88;

    /// <summary>The widest run of words in a block that is not divided between lines, in points.</summary>
    public static double Widest(Block block, SectionContext context) =>
        block switch
        {
            Text text => Widest(text, context),
            Figure figure => (figure.MaxWidth ?? figure.Drawing.NaturalWidth).Value,
            _ => block.Children.Select(child => Widest(child, context)).DefaultIfEmpty(0).Max(),
        };

    /// <summary>The widest of some words set in a style, in points.</summary>
    public static double Widest(string words, string style, SectionContext context) =>
        Widest(new Text(words, style), context);

    private static double Widest(Text text, SectionContext context)
    {
        TextStyle style = context.Theme.Styles.Find(text.Style) ?? context.Theme.Styles.Body;
        double widest = 0,
            width = 0;
        foreach (Inline piece in text.Content)
        {
            switch (piece)
            {
                case Run run:
                    foreach (char c in run.Text)
                    {
                        if (c is ' ' or '\n' or '\u200b')
                        {
                            Close();
                        }
                        else
                        {
                            width += WidthOf(c);
                        }
                    }
                    break;
                case Fraction fraction:
                    width += (fraction.Whole.Length * WidthOf('0')) + NumeralsOfFraction;
                    break;
                case InlineDrawing drawing:
                    width +=
                        drawing.Drawing.NaturalWidth.Value
                        * (
                            drawing.Height.Value
                            / drawing.Drawing.HeightFor(drawing.Drawing.NaturalWidth).Value
                        )
                        / style.Size.Value;
                    break;
                default:
                    Close();
                    break;
            }
        }
        Close();
        return widest * style.Size.Value * (style.Bold ? Bold : 1);

        void Close()
        {
            widest = Math.Max(widest, width);
            width = 0;
        }
    }

    // As shares of the size of type, about those of usual sans-serifs.
    private static double WidthOf(char c) =>
        c switch
        {
            >= '0' and <= '9' or '×' or '=' or '+' or '–' => 0.58,
            '\u00a0' => 0.2,
            'i' or 'j' or 'l' or 't' or 'f' or 'r' or 'I' => 0.32,
            '.' or ',' or ':' or ';' or '\'' or '’' or '(' or ')' or '/' => 0.28,
            'm' or 'w' or 'M' or 'W' => 0.82,
            _ when char.IsUpper(c) => 0.66,
            _ => 0.53,
        };
}
