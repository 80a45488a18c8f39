using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Blocks;

/// <summary>
/// A heading: text in the style <c>heading1</c> ... <c>heading6</c>, kept with what follows, listed in bookmarks and contents.
/// </summary>
/// <param name="Level">1 to 6.</param>
public sealed record Heading(int Level, ImmutableArray<Inline> Content) : Block
{
    public Heading(int level, string words)
        : this(level, FractionText.Parse(words)) { }

    /// <summary>The name that links use; none if nothing links here (bookmarks and contents need none).</summary>
    public string? Name { get; init; }

    /// <summary>The style's name where it is not that of the level.</summary>
    public string? Style { get; init; }

    /// <summary>The words of the bookmark where they differ from the heading's.</summary>
    public string? Title { get; init; }

    /// <summary>Whether contents and bookmarks list it.</summary>
    public bool Listed { get; init; } = true;

    public override Fit Fit(LayoutContext context, Room room) =>
        context.Fit(Words, room) switch
        {
            Fit.Fits fits => Ruled(context, room, new Fit.Fits(WithAnchor(fits.Fragment))),
            Fit.Splits splits => splits with { Fragment = WithAnchor(splits.Fragment) },
            var moves => moves,
        };

    // With the rules of its style above and below; where they no longer fit, the heading moves.
    Fit Ruled(LayoutContext context, Room room, Fit.Fits words)
    {
        var style = context.Style(Words.Style);
        if (style.RuleAbove is null && style.RuleBelow is null)
        {
            return words;
        }

        var gap = style.Leading / 5;
        var top = style.RuleAbove is { } above ? above.Width + gap : Points.Zero;
        var bottom = style.RuleBelow is { } below ? below.Width + gap : Points.Zero;
        var height = words.Fragment.Height + top + bottom;
        if (height > room.Height && !room.Forced)
        {
            return new Fit.Moves("no room is left for the rule of a heading", height);
        }

        var builder = new FragmentBuilder();
        if (style.RuleAbove is { } upper)
        {
            builder.AddArtifact([Line(upper, upper.Width / 2)]);
        }

        builder.Add(words.Fragment, Points.Zero, top);
        if (style.RuleBelow is { } lower)
        {
            builder.AddArtifact([Line(lower, height - (lower.Width / 2))]);
        }

        return new Fit.Fits(builder.ToFragment(room.Width, height));

        PageItem Line(Stroke pen, Points y) =>
            new PageItem.Path(
                VectorPath.Polyline(new(0, y.Value), new(room.Width.Value, y.Value)),
                null,
                pen
            );
    }

    public override WidthRange Widths(LayoutContext context) => Words.Widths(context);

    public override Spacing Spacing(LayoutContext context) => Words.Spacing(context);

    public override bool StaysWithNext(LayoutContext context) => true;

    public override IEnumerable<Block> Children => [Place, Words];

    Anchor Place => new(Name ?? "", Listed ? Level : 0, Title ?? FractionText.Plain(Content));

    Text Words =>
        new(Content, Style ?? $"heading{Level}")
        {
            Role = TagRole.Heading1 + Math.Clamp(Level, 1, 6) - 1,
            Origin = Origin,
        };

    Fragment WithAnchor(Fragment words) =>
        words with
        {
            Parts =
            [
                new FragmentPart.Item(Points.Zero, Points.Zero, Place.ToItem()),
                new FragmentPart.Child(Points.Zero, Points.Zero, words),
            ],
        };
}
