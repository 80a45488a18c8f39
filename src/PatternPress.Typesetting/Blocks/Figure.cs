using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Blocks;

/// <summary>A drawing with words for those who cannot see it, and possibly a caption. It shrinks down to a least width before it moves to the next page.</summary>
/// <param name="Drawing">What is drawn.</param>
/// <param name="Alt">What a sighted reader sees, in words; empty for mere decoration.</param>
public sealed record Figure(Drawing Drawing, string Alt) : Block
{
    /// <summary>Set below the drawing.</summary>
    public Block? Caption { get; init; }

    /// <summary>The width on paper where there is room; none for the drawing's natural width.</summary>
    public Points? MaxWidth { get; init; }

    /// <summary>The least width on paper; none if the figure does not shrink to stay on a page.</summary>
    public Points? MinWidth { get; init; }

    /// <summary>Where a drawing narrower than its place stands.</summary>
    public Alignment Alignment { get; init; } = Alignment.Left;

    public Points SpaceBefore { get; init; }

    public Points SpaceAfter { get; init; }

    public override Fit Fit(LayoutContext context, Room room) =>
        throw new NotImplementedException();
}
