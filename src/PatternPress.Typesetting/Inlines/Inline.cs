namespace PatternPress.Typesetting.Inlines;

/// <summary>A piece of a paragraph: words, a fraction, a page number, a small drawing.</summary>
public abstract record Inline
{
    /// <summary>What differs from the paragraph's style.</summary>
    public InlineStyle Style { get; init; } = InlineStyle.Plain;

    /// <summary>Where a click leads.</summary>
    public LinkTarget? Link { get; init; }
}
