using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Source;

namespace PatternPress.Quilting.Rules;

/// <summary>Turns of phrase that the messages share, so that all of them list, count and suggest alike.</summary>
internal static class Wording
{
    /// <summary>More names than this in a list are not read by anyone.</summary>
    private const int LongestList = 12;

    /// <summary>Two names joined in prose: "a and b"; more: "a, b and c". Names stand in quotes.</summary>
    public static string Names(IEnumerable<string> names)
    {
        List<string> quoted = [.. names.Take(LongestList + 1).Select(n => $"\"{n}\"")];
        if (quoted.Count > LongestList)
        {
            quoted[LongestList] = "others";
        }
        return quoted.Count switch
        {
            0 => "none",
            1 => quoted[0],
            _ => $"{string.Join(", ", quoted.SkipLast(1))} and {quoted[^1]}",
        };
    }

    /// <summary>Asks for the nearest known name, or lists the known ones.</summary>
    /// <param name="what">What the names are, plural: "fabrics".</param>
    public static string DidYouMean(string name, IEnumerable<string> known, string what)
    {
        List<string> names = [.. known];
        string? nearest = Nearest.To(name, names);
        return nearest is not null ? $"did you mean \"{nearest}\"?"
            : names.Count == 0 ? $"there are no {what} yet"
            : $"the {what} are {Names(names)}";
    }

    /// <summary>
    /// The known names that stand together in a word, with blanks between them: "L1 L2" of "L1L2"; null where the word
    /// is no such row of names.
    /// </summary>
    public static string? Apart(string word, IEnumerable<string> known)
    {
        // Longer names first: "L10" is not "L1" and a rest.
        List<string> names = [.. known.Where(n => n.Length > 0).OrderByDescending(n => n.Length)];
        var parts = new List<string>();
        for (int at = 0; at < word.Length; at += parts[^1].Length)
        {
            string? next = names.Find(n => word.AsSpan(at).StartsWith(n, StringComparison.Ordinal));
            if (next is null)
            {
                return null;
            }
            parts.Add(next);
        }
        return parts.Count > 1 ? string.Join(' ', parts) : null;
    }

    /// <summary>"1 row", "3 rows".</summary>
    public static string Count(long number, string one, string many) =>
        number == 1 ? $"1 {one}" : $"{number} {many}";

    /// <summary>Where units are used: ""G" and "F" of block "lamp"".</summary>
    public static string Uses(IEnumerable<BlockUse> uses) =>
        string.Join(
            ", ",
            uses.GroupBy(use => use.Block)
                .Select(block =>
                    $"{Names(block.Select(use => use.Letter).Distinct())} of block \"{block.Key}\""
                )
        );

    /// <summary>The words of the source that a class of units comes from.</summary>
    public static Span SpanOf(Pattern pattern, UnitClass units) =>
        units
            .Uses.Select(use =>
                pattern
                    .Block(use.Block)
                    ?.Units.FirstOrDefault(u => u.Design.Letter == use.Letter)
                    ?.Design.Span
            )
            .FirstOrDefault(span => span is not null)
        ?? Span.None;

    /// <summary>"12 1/2 in", "30 cm"; a length with roots as "about 8.485 in".</summary>
    public static string Measure(Length length) => $"{Number(length)} {Unit(length)}";

    /// <summary>"12 1/2 × 6 1/2 in".</summary>
    public static string Measure(Length width, Length height) =>
        Unit(width) == Unit(height)
            ? $"{Number(width)} × {Number(height)} {Unit(width)}"
            : $"{Measure(width)} × {Measure(height)}";

    /// <summary>"2 3/8 yd", "1.5 m".</summary>
    public static string Measure(Yardage yardage) =>
        IsMetric(yardage.ToBuy)
            ? $"{LengthText.Centimetres(yardage.ToBuy / 100)} m"
            : $"{LengthText.Mixed(yardage.Yards)} yd";

    /// <summary>"2 %" of the whole, rounded to whole per cent.</summary>
    public static string PerCent(double share) =>
        $"{Math.Round(share * 100, MidpointRounding.AwayFromZero):0} %";

    private static string Number(Length length) =>
        !length.Inches.IsRational ? $"about {length.Inches.ToDouble():0.###}"
        : IsMetric(length) ? LengthText.Centimetres(length)
        : LengthText.Inches(length);

    private static string Unit(Length length) => IsMetric(length) ? "cm" : "in";

    // One centimetre is 50/127 in: only a length that came from centimetres has that prime below its bar.
    private static bool IsMetric(Length length) =>
        length.Inches.IsRational && length.Inches.One.Denominator % 127 == 0;
}
