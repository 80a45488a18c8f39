using System.Collections.Immutable;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Source.Syntax;

/// <summary>Gathers the entries of a map while it is read, and refuses keys that are none or come twice.</summary>
internal sealed class EntryList(DiagnosticList diagnostics)
{
    private readonly ImmutableArray<Entry>.Builder entries = ImmutableArray.CreateBuilder<Entry>();
    private readonly Dictionary<string, ScalarNode> seen = new(StringComparer.Ordinal);
    private bool refused;

    /// <summary>The value that the map ends with, if it has any.</summary>
    public Node? Last => entries.Count == 0 ? null : entries[^1].Value;

    /// <summary>Whether there was something in the map, and all of it something else than keys.</summary>
    public bool HasOnlyRefused => refused && entries.Count == 0;

    /// <param name="keyAt">Where the key stands, should it be empty.</param>
    /// <param name="key">The key; null if it was refused before.</param>
    /// <param name="value">The value; null if it was refused before.</param>
    public void Add(Span keyAt, Node? key, Node? value)
    {
        if (key is ScalarNode { IsEmpty: true })
        {
            diagnostics.Add(SyntaxFaults.KeyIsEmpty(keyAt));
        }
        else if (key is not ScalarNode text)
        {
            refused = true;
            if (key is not null)
            {
                diagnostics.Add(SyntaxFaults.KeyIsNoText(key.Span));
            }
        }
        else if (value is not null)
        {
            if (seen.TryAdd(text.Value, text))
            {
                entries.Add(new Entry(text, value));
            }
            else
            {
                diagnostics.Add(SyntaxFaults.DuplicateKey(text, seen[text.Value]));
            }
        }
    }

    public MapNode ToMap(Span span) => new(span, entries.ToImmutable());
}
