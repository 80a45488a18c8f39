using System.Collections.Immutable;
using PatternPress.Quilting.Model;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;
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
    /// <summary>The distance between baselines that running text keeps through a page; zero for none.</summary>
    public Points Rhythm { get; init; }

    /// <summary>The forms of tables, notes and the cover.</summary>
    public PageForms Forms { get; init; } = new();

    /// <summary>How much larger the type is than that of the looks these are a variant of.</summary>
    public double Enlarged { get; init; } = 1;

    /// <summary>Looks for other pages than the usual, by name, each complete.</summary>
    public ImmutableSortedDictionary<string, PageLooks> Variants { get; init; } =
        ImmutableSortedDictionary<string, PageLooks>.Empty;

    /// <summary>A variant; these looks themselves for an empty name or one there is not.</summary>
    public PageLooks Variant(string name) => Variants.GetValueOrDefault(name, this);

    /// <summary>The looks for one pattern: with its accent colour.</summary>
    public Theme ThemeFor(IEnumerable<Fabric> fabrics)
    {
        Ink accent = Accent ?? AccentColor.From(fabrics, Tint) ?? Text;
        return ThemeWith(accent);
    }

    /// <summary>The looks where only black is printed: the accent is black, all else its grey.</summary>
    public Theme BlackTheme() =>
        (
            this with
            {
                Text = Ink.Black,
                Muted = Muted.ToGrey(),
                Rule = Rule.ToGrey(),
                Tint = Tint.ToGrey(),
                Styles = Styles.ToImmutableSortedDictionary(
                    s => s.Key,
                    s => s.Value.InGrey(),
                    Styles.KeyComparer
                ),
            }
        ).ThemeWith(Ink.Black);

    private Theme ThemeWith(Ink accent) =>
        new(
            Margins,
            Text,
            Muted,
            Rule,
            Tint,
            accent,
            new StyleSheet(
                Rhythm,
                Styles.Select(s => KeyValuePair.Create(s.Key, s.Value.ToTextStyle(this, accent)))
            )
        )
        {
            Forms = Forms,
            Enlarged = Enlarged,
        };
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

    /// <summary>The forms of tables, notes and the cover.</summary>
    public PageForms Forms { get; init; } = new();

    /// <summary>How much larger the type is than usual.</summary>
    public double Enlarged { get; init; } = 1;

    /// <summary>The ink of a ground; none for the paper.</summary>
    public Ink? InkOf(Ground ground) =>
        ground switch
        {
            Ground.Tint => Tint,
            Ground.Pale => AccentTint,
            Ground.Accent => Accent,
            _ => null,
        };
}

/// <summary>The looks of one kind of text, colours still by role.</summary>
/// <param name="Color">text, muted, accent, on-accent, or #rrggbb.</param>
/// <param name="HeadingRule">Where a heading of this style has a rule: "above", "below", or empty.</param>
public sealed record StyleLooks(TextStyle Style, string Color, string HeadingRule = "")
{
    private static readonly Points HeadingPen = 0.9.Pt;

    internal TextStyle ToTextStyle(PageLooks looks, Ink accent)
    {
        var pen = new Stroke(HeadingPen, accent);
        return Style with
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
            RuleAbove = HeadingRule == "above" ? pen : null,
            RuleBelow = HeadingRule == "below" ? pen : null,
        };
    }

    internal StyleLooks InGrey() =>
        Color.StartsWith('#') ? this with { Color = Ink.FromHex(Color).ToGrey().ToString() } : this;
}
