namespace PatternPress.Booklet.Words;

/// <summary>Takes one step's text out of a technique's: what stands between its heading and the next.</summary>
internal static class StepTexts
{
    /// <summary>What stands before the first heading.</summary>
    public static string Intro(string markdown) =>
        string.Join('\n', markdown.Split('\n').TakeWhile(line => !line.StartsWith('#')));

    public static string? Find(string markdown, string step)
    {
        List<string>? found = null;
        foreach (string line in markdown.Split('\n'))
        {
            if (line.StartsWith('#'))
            {
                if (found is not null)
                {
                    break;
                }
                if (line.TrimStart('#').Trim() == step)
                {
                    found = [];
                }
                continue;
            }
            found?.Add(line);
        }
        string text = found is null ? "" : string.Join('\n', found).Trim();
        return text.Length == 0 ? null : text;
    }
}
