using PatternPress.Booklet.Looks;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Words;

/// <summary>The one way tables look in all documents of a house: light rules, a tinted head, or as its looks say.</summary>
public static class TableLooks
{
    public static TableStyle Of(Theme theme) =>
        new()
        {
            Padding = Insets.Of(6.Pt, 3.5.Pt),
            TopRule = new Stroke(0.9.Pt, theme.Accent),
            HeaderRule = new Stroke(0.5.Pt, theme.Accent),
            RowRule =
                theme.Forms.TableRules == TableRules.Stripes
                    ? null
                    : new Stroke(0.35.Pt, theme.Rule),
            GroupRule = new Stroke(0.6.Pt, theme.Muted),
            BottomRule = new Stroke(0.6.Pt, theme.Accent),
            HeaderBackground = theme.InkOf(theme.Forms.TableHead),
            Stripe = theme.Forms.TableRules == TableRules.Stripes ? theme.Tint : null,
            ColumnRule =
                theme.Forms.TableRules == TableRules.Grid ? new Stroke(0.35.Pt, theme.Rule) : null,
        };

    /// <summary>Rows close together: for long lists that should stay on a page.</summary>
    public static TableStyle Dense(Theme theme) =>
        Of(theme) with
        {
            Padding = Insets.Of(6.Pt, 0.8.Pt),
        };

    /// <summary>Rules only between rows: for lists of facts.</summary>
    public static TableStyle Plain(Theme theme) =>
        Of(theme) with
        {
            TopRule = null,
            BottomRule = null,
            HeaderRule = null,
            HeaderBackground = null,
            Stripe = null,
            ColumnRule = null,
            RowRule = new Stroke(0.35.Pt, theme.Rule),
        };
}
