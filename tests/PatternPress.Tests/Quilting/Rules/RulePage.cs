namespace PatternPress.Tests.Quilting.Rules;

/// <summary>The page that explains a code, taken apart by its headings.</summary>
internal sealed class RulePage
{
    public static readonly string[] Headings =
    [
        "What it checks",
        "Why it matters",
        "Example",
        "Instead",
        "When to ignore it",
    ];

    private readonly string[] _lines;

    private RulePage(string file)
    {
        Name = Path.GetFileNameWithoutExtension(file);
        _lines = File.ReadAllText(file).ReplaceLineEndings("\n").Split('\n');
    }

    public static string Folder =>
        Path.Combine(Repository.Root, "src", "PatternPress.Quilting", "Rules");

    public string Name { get; }

    public string Code => Name.Split('_')[0];

    public string Title => _lines[0];

    public IEnumerable<string> Sections =>
        _lines.Where(l => l.StartsWith("## ", StringComparison.Ordinal)).Select(l => l[3..]);

    public static IEnumerable<RulePage> All() =>
        Directory
            .EnumerateFiles(Folder, "PP*.md")
            .Order(StringComparer.Ordinal)
            .Select(file => new RulePage(file));

    public override string ToString() => Name;

    /// <summary>Everything under a heading.</summary>
    public string Words(string heading) => string.Join('\n', Under(heading)).Trim();

    /// <summary>The source shown under a heading, with the sections it leaves out; null where words stand instead.</summary>
    public string? Source(string heading)
    {
        List<string> section = Under(heading);
        int fence = section.FindIndex(l => l.StartsWith("```yaml", StringComparison.Ordinal));
        if (fence < 0)
        {
            return null;
        }
        List<string> shown = [.. section.Skip(fence + 1).TakeWhile(l => l != "```")];
        // "yaml whole-file" is a file of its own; otherwise the example replaces sections of the base pattern.
        return section[fence].EndsWith("whole-file", StringComparison.Ordinal)
            ? string.Join('\n', shown)
            : string.Join('\n', shown.Append("").Concat(SectionsBesides(shown))) + "\n";
    }

    private List<string> Under(string heading) =>
        [
            .. _lines
                .SkipWhile(l => l != "## " + heading)
                .Skip(1)
                .TakeWhile(l => !l.StartsWith("## ", StringComparison.Ordinal)),
        ];

    private static IEnumerable<string> SectionsBesides(List<string> shown)
    {
        HashSet<string> replaced = [.. shown.Where(IsSection).Select(Key)];
        bool kept = false;
        foreach (
            string line in File.ReadAllLines(
                Path.Combine(Repository.Root, "tests", "cases", "rules", "base.quilt.yaml")
            )
        )
        {
            if (IsSection(line))
            {
                kept = !replaced.Contains(Key(line));
            }
            if (kept)
            {
                yield return line;
            }
        }
    }

    private static bool IsSection(string line) => line.Length > 0 && char.IsLetter(line[0]);

    private static string Key(string line) => line.Split(':')[0];
}
