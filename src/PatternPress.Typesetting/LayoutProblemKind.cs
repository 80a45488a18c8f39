namespace PatternPress.Typesetting;

/// <summary>What can go wrong while laying out.</summary>
public enum LayoutProblemKind
{
    /// <summary>A block that cannot be divided is taller than a page.</summary>
    TooTall,

    /// <summary>A word, measure or fixed column is wider than its place.</summary>
    TooWide,

    /// <summary>The font has no shape for a character.</summary>
    MissingGlyph,

    /// <summary>A block names a text style that the style sheet does not have.</summary>
    UnknownStyle,

    /// <summary>A link or page reference names an anchor that the document does not have.</summary>
    UnknownAnchor,

    /// <summary>Two anchors bear the same name.</summary>
    RepeatedAnchor,

    /// <summary>Page numbers did not settle after four passes.</summary>
    UnsettledPageNumbers,

    /// <summary>A page that does not end the document is filled to a small part only.</summary>
    NearlyEmpty,

    /// <summary>A header or footer is taller than its margin.</summary>
    FrameTooTall,
}
