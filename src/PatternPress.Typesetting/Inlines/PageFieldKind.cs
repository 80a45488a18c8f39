namespace PatternPress.Typesetting.Inlines;

/// <summary>Which page number a field shows.</summary>
public enum PageFieldKind
{
    /// <summary>The number of the page the field stands on.</summary>
    Page,

    /// <summary>The number of all pages.</summary>
    PageCount,

    /// <summary>The number of the page an anchor stands on.</summary>
    PageOfAnchor,
}
