using System.Collections.Immutable;

namespace PatternPress.Source.Syntax;

/// <summary>
/// A map: <c>key: value</c> entries in the order of the file, every key once (of a key given twice the first stays,
/// the second is reported when the tree is read).
/// </summary>
public sealed record MapNode(Span Span, ImmutableArray<Entry> Entries) : Node(Span)
{
    /// <summary>Below this many entries a walk is quicker than a dictionary.</summary>
    private const int FewEntries = 12;

    private Dictionary<string, Entry>? byKey;

    /// <summary>The value of a key, or null where the map has no such key.</summary>
    public Node? this[string key] => Find(key)?.Value;

    /// <summary>The entry of a key, or null where the map has no such key.</summary>
    public Entry? Find(string key)
    {
        if (Entries.Length > FewEntries)
        {
            byKey ??= Entries.ToDictionary(entry => entry.Key.Value, StringComparer.Ordinal);
            return byKey.GetValueOrDefault(key);
        }

        foreach (var entry in Entries)
        {
            if (entry.Key.Value == key)
            {
                return entry;
            }
        }

        return null;
    }
}
