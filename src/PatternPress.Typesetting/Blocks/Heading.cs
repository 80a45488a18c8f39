using System.Collections.Immutable;
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
            Fit.Fits fits => new Fit.Fits(WithAnchor(fits.Fragment)),
            Fit.Splits splits => splits with { Fragment = WithAnchor(splits.Fragment) },
            var moves => moves,
        };

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
