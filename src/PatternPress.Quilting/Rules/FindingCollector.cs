using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>
/// Gathers findings and merges those that differ only in size and numbers: one fault in five sizes is one message
/// that lists the sizes.
/// </summary>
/// <param name="sizes">The keys of the pattern's sizes in the designer's order.</param>
public sealed class FindingCollector(IEnumerable<string> sizes)
{
    private readonly List<string> _sizes = [.. sizes];
    private readonly List<Entry> _entries = [];
    private readonly Dictionary<Identity, Entry> _byIdentity = [];

    public void Add(Diagnostic diagnostic) => Add(new Finding(diagnostic));

    public void Add(Finding finding)
    {
        Diagnostic d = finding.Diagnostic;
        var identity = new Identity(
            d.Code,
            d.Severity,
            d.Title,
            d.Primary,
            d.Text,
            d.Hint,
            string.Join('\n', d.Others.Select(o => $"{o.Span} {o.Text}"))
        );
        if (!_byIdentity.TryGetValue(identity, out Entry? entry))
        {
            entry = new Entry(d);
            _byIdentity.Add(identity, entry);
            _entries.Add(entry);
        }
        if (finding.Size is not null && !entry.Found.Contains((finding.Size, finding.Numbers)))
        {
            entry.Found.Add((finding.Size, finding.Numbers));
        }
    }

    public void AddRange(IEnumerable<Finding> findings)
    {
        foreach (Finding finding in findings)
        {
            Add(finding);
        }
    }

    /// <summary>The merged diagnostics in the order of the source file; those without a place come last.</summary>
    public IReadOnlyList<Diagnostic> ToDiagnostics() => [.. _entries.Select(Merge).Sorted(InOrder)];

    /// <summary>By place in the file, then by code; what has no place comes last.</summary>
    internal static int InOrder(Diagnostic a, Diagnostic b)
    {
        var (first, second) = (a.Primary.Span, b.Primary.Span);
        int order = first.IsNone.CompareTo(second.IsNone);
        order = order != 0 ? order : string.CompareOrdinal(first.File, second.File);
        order = order != 0 ? order : first.StartLine - second.StartLine;
        order = order != 0 ? order : first.StartColumn - second.StartColumn;
        return order != 0 ? order : string.CompareOrdinal(a.Code, b.Code);
    }

    private Diagnostic Merge(Entry entry)
    {
        if (entry.Found.Count == 0)
        {
            return entry.Diagnostic;
        }
        List<(string Size, string Numbers)> found =
        [
            .. entry
                .Found.OrderBy(f => SizeOrder(f.Size))
                .ThenBy(f => f.Size, StringComparer.Ordinal),
        ];
        var lines = new List<string>();
        if (entry.Diagnostic.Text.Length > 0)
        {
            lines.Add(entry.Diagnostic.Text);
        }
        // Sizes with the same numbers share a line; the line stands where its first size stands.
        foreach (
            IGrouping<string, (string Size, string Numbers)> alike in found.GroupBy(f => f.Numbers)
        )
        {
            if (alike.Key.Length > 0)
            {
                lines.Add($"{string.Join(", ", alike.Select(f => f.Size))}: {alike.Key}");
            }
        }
        return entry.Diagnostic with
        {
            Text = string.Join('\n', lines),
            Sizes = [.. found.Select(f => f.Size).Distinct()],
        };
    }

    private int SizeOrder(string size) =>
        _sizes.IndexOf(size) is >= 0 and int index ? index : int.MaxValue;

    private sealed record Identity(
        string Code,
        Severity Severity,
        string Title,
        Label Primary,
        string Text,
        string? Hint,
        string Others
    );

    private sealed class Entry(Diagnostic diagnostic)
    {
        public Diagnostic Diagnostic { get; } = diagnostic;

        public List<(string Size, string Numbers)> Found { get; } = [];
    }
}
