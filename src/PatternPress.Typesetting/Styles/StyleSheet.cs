using System.Collections.Immutable;

namespace PatternPress.Typesetting.Styles;

/// <summary>Named text styles. Every sheet has a style called <see cref="BodyName"/>, which stands in for unknown names.</summary>
public sealed class StyleSheet
{
    /// <summary>The name of the style of running text.</summary>
    public const string BodyName = "body";

    readonly ImmutableSortedDictionary<string, TextStyle> styles;

    /// <param name="rhythm">The distance between baselines that running text keeps through a page; zero for none.</param>
    /// <param name="styles">The styles by name.</param>
    public StyleSheet(Points rhythm, IEnumerable<KeyValuePair<string, TextStyle>> styles)
    {
        Rhythm = rhythm;
        var sorted = styles.ToImmutableSortedDictionary(StringComparer.Ordinal);
        this.styles = sorted.ContainsKey(BodyName) ? sorted : sorted.Add(BodyName, new TextStyle());
    }

    /// <summary>The distance between baselines that running text keeps through a page; zero for none.</summary>
    public Points Rhythm { get; }

    /// <summary>The style of running text.</summary>
    public TextStyle Body => styles[BodyName];

    /// <summary>The names of all styles, sorted.</summary>
    public IEnumerable<string> Names => styles.Keys;

    /// <summary>The style of a name, or none.</summary>
    public TextStyle? Find(string name) => styles.GetValueOrDefault(name);

    /// <summary>A sheet that has one style more or changed.</summary>
    public StyleSheet With(string name, TextStyle style) =>
        new(Rhythm, styles.SetItem(name, style));
}
