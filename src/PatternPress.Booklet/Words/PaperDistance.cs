using PatternPress.Typesetting;

namespace PatternPress.Booklet.Words;

/// <summary>A distance on paper as houses write it: a number and a unit, <c>1/8 in</c>, <c>3 mm</c>, <c>9 pt</c>.</summary>
internal static class PaperDistance
{
    public static bool TryParse(string text, out Points distance)
    {
        distance = Points.Zero;
        string[] words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length != 2 || !TryNumber(words[0], out double number))
        {
            return false;
        }
        Points? read = words[1] switch
        {
            "in" => number.Inch,
            "mm" => number.Mm,
            "pt" => number.Pt,
            _ => null,
        };
        distance = read ?? Points.Zero;
        return read is not null;
    }

    private static bool TryNumber(string text, out double number)
    {
        string[] parts = text.Split('/');
        if (
            parts.Length == 2
            && double.TryParse(
                parts[0],
                System.Globalization.NumberStyles.None,
                null,
                out double above
            )
            && double.TryParse(
                parts[1],
                System.Globalization.NumberStyles.None,
                null,
                out double below
            )
            && below > 0
        )
        {
            number = above / below;
            return Most(number);
        }
        return double.TryParse(
                text,
                System.Globalization.NumberStyles.AllowDecimalPoint,
                null,
                out number
            ) && Most(number);

        // Beyond any paper; keeps what follows from overflowing.
        static bool Most(double number) => double.IsFinite(number) && number < 10_000;
    }
}
