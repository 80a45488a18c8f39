namespace PatternPress.Source;

/// <summary>
/// The known name a mistyped one probably meant. If there is only one candidate it is offered; else one that differs
/// only in case; else the one with the fewest wrong letters, up to a third of its length.
/// </summary>
public static class Nearest
{
    /// <summary>Longer words than any name; comparing them would only cost time.</summary>
    private const int LongestWord = 64;

    public static string? To(string word, IEnumerable<string> candidates)
    {
        var all = candidates as IReadOnlyCollection<string> ?? [.. candidates];
        if (all.Count == 1)
        {
            foreach (var only in all)
            {
                return only;
            }
        }

        foreach (var candidate in all)
        {
            if (string.Equals(candidate, word, StringComparison.OrdinalIgnoreCase))
            {
                return candidate;
            }
        }

        if (word.Length > LongestWord)
        {
            return null;
        }

        string? best = null;
        var fewest = int.MaxValue;
        foreach (var candidate in all)
        {
            var allowed = Math.Max(word.Length, candidate.Length) / 3;
            if (
                candidate.Length > LongestWord
                || Math.Abs(candidate.Length - word.Length) > allowed
            )
            {
                continue;
            }

            var distance = Distance(word, candidate);
            if (distance <= allowed && distance < fewest)
            {
                fewest = distance;
                best = candidate;
            }
        }

        return best;
    }

    /// <summary>
    /// How many letters to insert, delete, replace or swap with their neighbour to make one word of the other, letter
    /// case aside (restricted Damerau-Levenshtein distance).
    /// </summary>
    public static int Distance(string left, string right)
    {
        Span<int> beforeLast = stackalloc int[right.Length + 1];
        Span<int> last = stackalloc int[right.Length + 1];
        Span<int> current = stackalloc int[right.Length + 1];
        for (var j = 0; j <= right.Length; j++)
        {
            last[j] = j;
        }

        for (var i = 1; i <= left.Length; i++)
        {
            current[0] = i;
            for (var j = 1; j <= right.Length; j++)
            {
                var a = char.ToLowerInvariant(left[i - 1]);
                var b = char.ToLowerInvariant(right[j - 1]);
                var replace = last[j - 1] + (a == b ? 0 : 1);
                current[j] = Math.Min(Math.Min(last[j], current[j - 1]) + 1, replace);
                if (
                    i > 1
                    && j > 1
                    && a == char.ToLowerInvariant(right[j - 2])
                    && b == char.ToLowerInvariant(left[i - 2])
                )
                {
                    current[j] = Math.Min(current[j], beforeLast[j - 2] + 1);
                }
            }

            var spare = beforeLast;
            beforeLast = last;
            last = current;
            current = spare;
        }

        return last[right.Length];
    }
}
