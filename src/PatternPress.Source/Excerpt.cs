namespace PatternPress.Source;

/// <summary>Shortens what a file says so that a message can quote it: one line, at most forty characters.</summary>
internal static class Excerpt
{
    private const int Longest = 40;

    public static string Of(string text)
    {
        var line = text.AsSpan().TrimEnd('\n');
        var end = line.IndexOf('\n');
        var length = Math.Min(end < 0 ? line.Length : end, Longest);
        if (length == line.Length)
        {
            return line.ToString();
        }

        // Never between the two halves of one character.
        length -= length > 0 && char.IsHighSurrogate(line[length - 1]) ? 1 : 0;
        return $"{line[..length]}...";
    }
}
