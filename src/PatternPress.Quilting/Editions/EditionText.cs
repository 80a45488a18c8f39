using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text;

namespace PatternPress.Quilting.Editions;

/// <summary>
/// An edition as a text that can be reviewed line by line: a line for each thing printed, with its values in all sizes.
/// </summary>
public static class EditionText
{
    private const string Between = " | ";
    private const string Is = " = ";
    private const string AllSizes = "all";

    public static string Write(Edition edition)
    {
        var text = new StringBuilder();
        text.Append(
            $"# What edition {edition.Number} of {edition.Pattern} prints. Written by \"patternpress release\"; not to be edited.\n"
        );
        text.Append("# row | what it says | size = value | size = value …\n");
        text.Append($"pattern: {edition.Pattern}\n");
        text.Append($"title: {Escape(edition.Title)}\n");
        text.Append($"edition: {Escape(edition.Number)}\n");
        text.Append($"date: {edition.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}\n");
        text.Append($"sizes: {string.Join(' ', edition.Sizes)}\n");
        string table = "";
        List<string> tables = [.. edition.Facts.Select(fact => fact.Table).Distinct()];
        // The sizes of one row and item stand together, in the order in which the first of them is printed.
        foreach (
            IGrouping<(string Table, string Row, string Item), EditionFact> line in edition
                .Facts.GroupBy(fact => (fact.Table, fact.Row, fact.Item))
                .OrderBy(line => tables.IndexOf(line.Key.Table))
        )
        {
            if (line.Key.Table != table)
            {
                table = line.Key.Table;
                text.Append($"\n== {table}\n");
            }
            text.Append(Escape(line.Key.Row)).Append(Between).Append(Escape(line.Key.Item));
            foreach (EditionFact fact in line)
            {
                string size = fact.Size.Length == 0 ? AllSizes : fact.Size;
                text.Append(Between).Append(size).Append(Is).Append(Escape(fact.Value));
            }
            text.Append('\n');
        }
        return text.ToString();
    }

    /// <param name="problem">What is wrong, with the line's number.</param>
    public static bool TryRead(
        string text,
        [NotNullWhen(true)] out Edition? edition,
        out string problem
    )
    {
        edition = null;
        var head = new Dictionary<string, string>(StringComparer.Ordinal);
        var facts = ImmutableArray.CreateBuilder<EditionFact>();
        string? table = null;
        string[] lines = text.ReplaceLineEndings("\n").Split('\n');
        for (int i = 0; i < lines.Length; i++)
        {
            string line = lines[i];
            if (line.Length == 0 || line[0] == '#')
            {
                continue;
            }
            if (line.StartsWith("== ", StringComparison.Ordinal))
            {
                table = line[3..];
                continue;
            }
            if (table is null)
            {
                int colon = line.IndexOf(": ", StringComparison.Ordinal);
                if (colon < 0)
                {
                    problem = $"line {i + 1} should be a name and a value: edition: 1.0.0";
                    return false;
                }
                head[line[..colon]] = Plain(line[(colon + 2)..]);
                continue;
            }
            string[] parts = line.Split(Between);
            if (parts.Length < 3)
            {
                problem = $"line {i + 1} should have a row, what it says, and values";
                return false;
            }
            foreach (string part in parts[2..])
            {
                int at = part.IndexOf(Is, StringComparison.Ordinal);
                if (at < 0)
                {
                    problem = $"line {i + 1}: \"{part}\" should be a size and its value";
                    return false;
                }
                string size = part[..at];
                facts.Add(
                    new EditionFact(
                        table,
                        Plain(parts[0]),
                        Plain(parts[1]),
                        size == AllSizes ? "" : size,
                        Plain(part[(at + Is.Length)..])
                    )
                );
            }
        }
        foreach (string name in new[] { "pattern", "edition", "date", "sizes" })
        {
            if (!head.ContainsKey(name))
            {
                problem = $"the line \"{name}: …\" is missing";
                return false;
            }
        }
        if (
            !DateOnly.TryParseExact(
                head["date"],
                "yyyy-MM-dd",
                CultureInfo.InvariantCulture,
                DateTimeStyles.None,
                out DateOnly date
            )
        )
        {
            problem = $"\"{head["date"]}\" is not a date such as 2026-11-01";
            return false;
        }
        problem = "";
        edition = new Edition(
            head["pattern"],
            head.GetValueOrDefault("title", head["pattern"]),
            head["edition"],
            date,
            [.. head["sizes"].Split(' ', StringSplitOptions.RemoveEmptyEntries)],
            facts.ToImmutable()
        );
        return true;
    }

    private static string Escape(string words) =>
        words
            .Replace("\\", "\\\\", StringComparison.Ordinal)
            .Replace("|", "\\/", StringComparison.Ordinal)
            .Replace("=", "\\-", StringComparison.Ordinal)
            .Replace("#", "\\#", StringComparison.Ordinal)
            .Replace("\r", "", StringComparison.Ordinal)
            .Replace("\n", "\\n", StringComparison.Ordinal);

    private static string Plain(string words)
    {
        if (!words.Contains('\\', StringComparison.Ordinal))
        {
            return words;
        }
        var plain = new StringBuilder(words.Length);
        for (int i = 0; i < words.Length; i++)
        {
            if (words[i] != '\\' || i + 1 == words.Length)
            {
                plain.Append(words[i]);
                continue;
            }
            plain.Append(
                words[++i] switch
                {
                    '/' => '|',
                    '-' => '=',
                    'n' => '\n',
                    var same => same,
                }
            );
        }
        return plain.ToString();
    }
}
