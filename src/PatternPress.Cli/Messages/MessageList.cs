using System.Collections.Immutable;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Cli.Messages;

/// <summary>The findings of a run in the order they are shown, with the texts they point into.</summary>
public sealed class MessageList
{
    private readonly Dictionary<string, SourceText> sources = new(StringComparer.Ordinal);

    /// <param name="found">The findings, in any order.</param>
    /// <param name="sources">The files that were read; a file that is not among them is named, not shown.</param>
    public MessageList(IEnumerable<Diagnostic> found, IEnumerable<SourceText> sources)
    {
        All = [.. found.Order(DiagnosticOrder.Instance)];
        foreach (var source in sources)
        {
            this.sources[source.File] = source;
        }

        Errors = Count(Severity.Error);
        Warnings = Count(Severity.Warning);
        Notes = Count(Severity.Note);
        Files =
        [
            .. All.Select(one => one.Primary.Span.File ?? "")
                .Where(file => file.Length > 0)
                .Distinct(),
        ];
    }

    public ImmutableArray<Diagnostic> All { get; }

    public int Errors { get; }

    public int Warnings { get; }

    public int Notes { get; }

    /// <summary>The files that have findings, in order.</summary>
    public ImmutableArray<string> Files { get; }

    /// <summary>The text of a file, or null if it was not read.</summary>
    public SourceText? Source(string file) => sources.GetValueOrDefault(file);

    /// <summary>One line about all of them: "2 errors, 1 warning in harbor-lights.quilt.yaml".</summary>
    public string Summary()
    {
        if (All.IsEmpty)
        {
            return "nothing found";
        }

        List<string> counts = [];
        Add(counts, Errors, "error");
        Add(counts, Warnings, "warning");
        Add(counts, Notes, "note");
        var where = Files switch
        {
            [] => "",
            [var file] => $" in {file[(file.LastIndexOfAny(['/', '\\']) + 1)..]}",
            _ => $" in {Files.Length} files",
        };
        return string.Join(", ", counts) + where;
    }

    private static void Add(List<string> counts, int count, string noun)
    {
        if (count > 0)
        {
            counts.Add(count == 1 ? $"1 {noun}" : $"{count} {noun}s");
        }
    }

    private int Count(Severity severity)
    {
        var count = 0;
        foreach (var one in All)
        {
            count += one.Severity == severity ? 1 : 0;
        }

        return count;
    }
}
