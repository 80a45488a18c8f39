using System.Collections.Immutable;
using PatternPress.Source.Syntax;

namespace PatternPress.Booklet.Looks;

/// <summary>Maps laid over one another: of several values of a key the last map's counts.</summary>
internal readonly record struct Layered(ImmutableArray<MapNode> Maps)
{
    /// <summary>All keys, each once.</summary>
    public IEnumerable<string> Names =>
        Maps.SelectMany(map => map.Entries).Select(entry => entry.Key.Value).Distinct();

    /// <summary>The value of a key; null where no map has one.</summary>
    public ScalarNode? this[string key]
    {
        get
        {
            for (int i = Maps.Length - 1; i >= 0; i--)
            {
                if (Maps[i][key] is ScalarNode node)
                {
                    return node;
                }
            }
            return null;
        }
    }

    /// <summary>The maps behind a key, laid over one another.</summary>
    public Layered Map(string key) => new([.. Maps.Select(map => map[key]).OfType<MapNode>()]);

    /// <summary>These maps with others over them.</summary>
    public Layered Under(Layered others) => new([.. Maps, .. others.Maps]);
}
