namespace PatternPress.Typesetting.Inlines;

/// <summary>A page number that is known only when all pages are.</summary>
/// <param name="Kind">Which number.</param>
/// <param name="Anchor">The anchor whose page is meant, for <see cref="PageFieldKind.PageOfAnchor"/>.</param>
public sealed record PageField(PageFieldKind Kind, string? Anchor = null) : Inline
{
    public static PageField Page => new(PageFieldKind.Page);

    public static PageField PageCount => new(PageFieldKind.PageCount);

    public static PageField PageOf(string anchor) => new(PageFieldKind.PageOfAnchor, anchor);
}
