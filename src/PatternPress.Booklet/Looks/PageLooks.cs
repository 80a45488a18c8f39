using System.Collections.Immutable;
using PatternPress.Quilting.Model;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Booklet.Looks;

/// <summary>What pages look like, apart from the pattern: <c>templates/looks.yaml</c>.</summary>
/// <param name="Margins">From the edge of the sheet to the text.</param>
/// <param name="Accent">The accent colour; null to take it from the pattern's fabrics.</param>
/// <param name="Styles">Text styles by name, in ordinal order.</param>
public sealed record PageLooks(
    Insets Margins,
    Ink Text,
    Ink Muted,
    Ink Rule,
    Ink Tint,
    Ink? Accent,
    ImmutableSortedDictionary<string, StyleLooks> Styles
)
{
    /// <summary>The looks for one pattern: with its accent colour.</summary>
    public Theme ThemeFor(IEnumerable<Fabric> fabrics)
    {
        Ink accent = Accent ?? AccentColor.From(fabrics) ?? Text;
        return new Theme(
            Margins,
            Text,
            Muted,
            Rule,
            Tint,
            accent,
            new StyleSheet(
                Points.Zero,
                Styles.Select(s => KeyValuePair.Create(s.Key, s.Value.ToTextStyle(this, accent)))
            )
        );
    }
}

/// <summary>The looks of one pattern's documents.</summary>
/// <param name="Accent">Reads on white with a contrast of at least 4.5.</param>
public sealed record Theme(
    Insets Margins,
    Ink Text,
    Ink Muted,
    Ink Rule,
    Ink Tint,
    Ink Accent,
    StyleSheet Styles
)
{
    /// <summary>A pale mixture of the accent with white, for grounds.</summary>
    public Ink AccentTint => Accent.MixedWith(Ink.White, 0.9);
}

/// <summary>The looks of one kind of text, colours still by role.</summary>
/// <param name="Color">text, muted, accent, on-accent, or #rrggbb.</param>
public sealed record StyleLooks(TextStyle Style, string Color)
{
    internal TextStyle ToTextStyle(PageLooks looks, Ink accent) =>
        Style with
        {
            Ink = Color switch
            {
                "text" => looks.Text,
                "muted" => looks.Muted,
                "accent" => accent,
                "on-accent" => accent.ReadableOn(),
                _ => Ink.FromHex(Color),
            },
            LinkInk = null,
        };
}
