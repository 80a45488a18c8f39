using PatternPress.Quilting.Measures;
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

    /// <summary>"1 row", "3 rows".</summary>
    public static string Count(long number, string one, string many) =>
        number == 1 ? $"1 {one}" : $"{number} {many}";

    /// <summary>"12 1/2 in"; a length with roots as "about 8.485 in".</summary>
    public static string Inches(Length length) =>
        length.Inches.IsRational
            ? LengthText.Inches(length) + " in"
            : $"about {length.Inches.ToDouble():0.###} in";

    /// <summary>"12 1/2 × 6 1/2 in".</summary>
    public static string Inches(Length width, Length height) =>
        width.Inches.IsRational && height.Inches.IsRational
            ? $"{LengthText.Inches(width)} × {LengthText.Inches(height)} in"
            : $"about {width.Inches.ToDouble():0.###} × {height.Inches.ToDouble():0.###} in";
}
