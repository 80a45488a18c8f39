using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Blocks;

/// <summary>A heading: text in the style <c>heading1</c> ... <c>heading6</c>, kept with what follows, listed in bookmarks and contents.</summary>
/// <param name="Level">1 to 6.</param>
public sealed record Heading(int Level, ImmutableArray<Inline> Content) : Block
{
    public Heading(int level, string words)
        : this(level, FractionText.Parse(words)) { }

    /// <summary>The name links use; one is made from the words when none is given.</summary>
    public string? Name { get; init; }

    /// <summary>The style's name where it is not that of the level.</summary>
    public string? Style { get; init; }

    /// <summary>The words of the bookmark where they differ from the heading's.</summary>
    public string? Title { get; init; }

    /// <summary>Whether contents and bookmarks list it.</summary>
    public bool Listed { get; init; } = true;

    public override Fit Fit(LayoutContext context, Room room) =>
        throw new NotImplementedException();
}
