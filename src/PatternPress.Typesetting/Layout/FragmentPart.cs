using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Layout;

/// <summary>Something that stands in a fragment.</summary>
/// <param name="X">From the fragment's left edge.</param>
/// <param name="Y">From the fragment's upper edge.</param>
public abstract record FragmentPart(Points X, Points Y)
{
    /// <summary>Another fragment.</summary>
    public sealed record Child(Points X, Points Y, Fragment Fragment) : FragmentPart(X, Y);

    /// <summary>A page item, whose own place is relative to the part.</summary>
    public sealed record Item(Points X, Points Y, PageItem PageItem) : FragmentPart(X, Y);

    /// <summary>A drawing at a width on paper.</summary>
    public sealed record Picture(Points X, Points Y, Points Width, Drawing Drawing)
        : FragmentPart(X, Y);
}
