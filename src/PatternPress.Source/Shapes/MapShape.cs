using System.Collections.Immutable;

namespace PatternPress.Source.Shapes;

/// <summary>A map whose keys are known beforehand.</summary>
public sealed record MapShape(string What, string Description, ImmutableArray<Key> Keys)
    : Shape(What, Description)
{
    /// <summary>Keys of which exactly one must be given; empty for none.</summary>
    public ImmutableArray<string> ExactlyOneOf { get; init; } = [];

    /// <summary>Keys of which at least one must be given; empty for none. The first is the usual one.</summary>
    public ImmutableArray<string> OneOrMoreOf { get; init; } = [];

    /// <summary>The key of a name, or null.</summary>
    public Key? Find(string name)
    {
        foreach (var key in Keys)
        {
            if (key.Name == name)
            {
                return key;
            }
        }

        return null;
    }

    internal IEnumerable<string> Names => Keys.Select(key => key.Name);

    /// <summary>The key in a text such as <c>name:Amber</c>, where the blank after the colon is missing.</summary>
    internal string? GluedKey(string text)
    {
        var colon = text.IndexOf(':');
        return colon > 0 ? Find(text[..colon])?.Name : null;
    }

    /// <summary>The key one level further in that a misplaced key belongs under, or null.</summary>
    internal string? Inner(string name)
    {
        foreach (var key in Keys)
        {
            var inner = key.Value is ListShape list ? list.Item : key.Value;
            if (inner is MapShape map && map.Find(name) is not null)
            {
                return key.Name;
            }
        }

        return null;
    }

    /// <summary>The same map with every key optional, for places that change only a part of it.</summary>
    public MapShape Partial()
    {
        var keys = ImmutableArray.CreateBuilder<Key>(Keys.Length);
        foreach (var key in Keys)
        {
            keys.Add(key with { Required = false });
        }

        return this with
        {
            Keys = keys.MoveToImmutable(),
            ExactlyOneOf = [],
            OneOrMoreOf = [],
        };
    }
}
