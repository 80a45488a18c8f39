namespace PatternPress.Typesetting.Styles;

/// <summary>Named text styles. Every sheet has a style called <see cref="BodyName"/>, which stands in for unknown names.</summary>
public sealed class StyleSheet
{
    /// <summary>The name of the style of running text.</summary>
    public const string BodyName = "body";

    readonly Dictionary<string, TextStyle> styles = new(StringComparer.Ordinal);

    /// <param name="rhythm">The distance between baselines that running text keeps through a page; zero for none.</param>
    /// <param name="styles">The styles by name.</param>
    public StyleSheet(Points rhythm, IEnumerable<KeyValuePair<string, TextStyle>> styles)
    {
        Rhythm = rhythm;
        foreach (var (name, style) in styles)
        {
            this.styles[name] = style;
        }

        this.styles.TryAdd(BodyName, new TextStyle());
    }

    /// <summary>The distance between baselines that running text keeps through a page; zero for none.</summary>
    public Points Rhythm { get; }

    /// <summary>The style of running text.</summary>
    public TextStyle Body => styles[BodyName];

    /// <summary>The names of all styles, sorted.</summary>
    public IEnumerable<string> Names => styles.Keys.Order(StringComparer.Ordinal);

    /// <summary>The style of a name, or none.</summary>
    public TextStyle? Find(string name) => styles.GetValueOrDefault(name);

    /// <summary>A sheet that has one style more or changed.</summary>
    public StyleSheet With(string name, TextStyle style) =>
        new(Rhythm, styles.Append(new(name, style)));
}
