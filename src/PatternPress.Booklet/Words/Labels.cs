using System.Collections.Immutable;

namespace PatternPress.Booklet.Words;

/// <summary>The short words of tables, captions and footers, by name; in <c>templates/&lt;language&gt;/labels.yaml</c>.</summary>
public sealed class Labels(ImmutableDictionary<string, string> words)
{
    /// <summary>What stands where a word is missing, so that a page shows which.</summary>
    public const string MissingMark = "⟨";

    public string this[string name] =>
        words.TryGetValue(name, out string? word) ? word : $"{MissingMark}{name}⟩";

    public IEnumerable<string> Names => words.Keys.Order(StringComparer.Ordinal);

    /// <summary>A word with its gaps filled: "{0} of {1}".</summary>
    public string Format(string name, params ReadOnlySpan<object?> values)
    {
        string word = this[name];
        try
        {
            return string.Format(null, word, values);
        }
        catch (FormatException)
        {
            // A house's label with a stray brace is shown as it stands.
            return word;
        }
    }

    /// <summary>The word for a number of things: the name with "-one" or "-many", the number filled in.</summary>
    public string Count(string name, long number) =>
        Format(number == 1 ? $"{name}-one" : $"{name}-many", number);

    /// <summary>"a", "a and b", "a, b and c".</summary>
    public string List(IEnumerable<string> items)
    {
        List<string> all = [.. items];
        return all.Count < 2
            ? string.Concat(all)
            : $"{string.Join(", ", all.SkipLast(1))} {this["and"]} {all[^1]}";
    }
}
