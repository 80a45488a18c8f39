using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Typesetting.Pages;

/// <summary>One positioned thing on a page. Places are distances from the page's left and upper edge.</summary>
public abstract record PageItem
{
    /// <summary>Letters on a baseline.</summary>
    public sealed record Text(
        Points X,
        Points Baseline,
        FontFace Face,
        Points Size,
        Ink Ink,
        ShapedText Shape
    ) : PageItem
    {
        /// <summary>Turned about its start by degrees, clockwise.</summary>
        public double Degrees { get; init; }

        /// <summary>The width of the letters.</summary>
        public Points Width { get; init; }

        /// <summary>The characters shown.</summary>
        public string Characters => Shape.Characters;
    }

    /// <summary>
    /// What follows, up to the matching end, is text that stands for other characters than those shown (12 5/16), or is in
    /// another language (BCP 47). Holds texts only.
    /// </summary>
    public sealed record SpanBegin(string? ActualText, string? Language) : PageItem;

    public sealed record SpanEnd : PageItem;

    /// <summary>An outline, filled, drawn or both; its points are in points from the page's upper left corner.</summary>
    public sealed record Path(VectorPath Outline, Ink? Fill, Stroke? Stroke, bool EvenOdd = false)
        : PageItem
    {
        /// <summary>Fills the outline instead of the ink, which shows where images cannot.</summary>
        public ImageFill? Image { get; init; }
    }

    /// <summary>Items of which only what lies inside the outline shows.</summary>
    public sealed record Clip(
        VectorPath Outline,
        ImmutableArray<PageItem> Items,
        bool EvenOdd = false
    ) : PageItem;

    /// <summary>A place to click; belongs to a tag of the role <see cref="TagRole.Link"/>.</summary>
    public sealed record Link(PageRect Place, LinkTarget Target, Tag Tag, string Words) : PageItem;

    /// <summary>A named place.</summary>
    /// <param name="Level">1 to 6 for headings that bookmarks and contents list; 0 for places only linked to.</param>
    public sealed record Anchor(Points X, Points Y, string Name, int Level, string Title)
        : PageItem;

    /// <summary>What follows, up to the matching end, belongs to the tag.</summary>
    public sealed record TagBegin(Tag Tag) : PageItem
    {
        /// <summary>Of figures: the box around them.</summary>
        public PageRect? Place { get; init; }
    }

    public sealed record TagEnd(Tag Tag) : PageItem;

    /// <summary>What follows, up to the matching end, is not read aloud. Artifacts hold no tags.</summary>
    public sealed record ArtifactBegin(ArtifactKind Kind) : PageItem;

    public sealed record ArtifactEnd : PageItem;

    /// <summary>What follows, up to the matching end, should stay inside this place: a cell, a box, a figure. For inspection only.</summary>
    public sealed record RegionBegin(PageRect Place, string Name) : PageItem;

    public sealed record RegionEnd : PageItem;
}
