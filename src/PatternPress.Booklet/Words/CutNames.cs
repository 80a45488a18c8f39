using System.Globalization;

namespace PatternPress.Booklet.Words;

/// <summary>Names of pieces that are cut together, as one: "A3/A4", and of more than two in a row "A3–A14".</summary>
internal static class CutNames
{
    /// <summary>So many in a row are told by the first and the last.</summary>
    private const int Run = 3;

    public static string Joined(IReadOnlyList<string> names, string between = "/")
    {
        var parts = new List<string>();
        for (int i = 0; i < names.Count; )
        {
            int end = i + 1;
            while (end < names.Count && Follows(names[end - 1], names[end]))
            {
                end++;
            }
            if (end - i >= Run)
            {
                parts.Add($"{names[i]}–{names[end - 1]}");
                i = end;
                continue;
            }
            parts.Add(names[i]);
            i++;
        }
        return string.Join(between, parts);
    }

    private static bool Follows(string before, string after)
    {
        (string stem, int number) = Split(before);
        (string next, int following) = Split(after);
        return stem == next && following == number + 1;
    }

    private static (string Stem, int Number) Split(string name)
    {
        int digits = name.Length;
        while (digits > 0 && char.IsAsciiDigit(name[digits - 1]))
        {
            digits--;
        }
        return int.TryParse(
            name.AsSpan(digits),
            NumberStyles.None,
            CultureInfo.InvariantCulture,
            out int number
        )
            ? (name[..digits], number)
            : (name, -1);
    }
}
