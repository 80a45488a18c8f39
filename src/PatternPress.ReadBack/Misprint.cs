namespace PatternPress.ReadBack;

/// <summary>Something in a written file that is not as the document asks.</summary>
/// <param name="Page">From 1; 0 where it is on no page.</param>
/// <param name="Text">In words, with what was expected and what was found.</param>
public sealed record Misprint(MisprintKind Kind, int Page, string Text);

public enum MisprintKind
{
    /// <summary>Words of the document are not in the file, or others stand in their place.</summary>
    Words,

    /// <summary>Words stand outside the margins or the sheet.</summary>
    OutsideMargins,

    /// <summary>Words leave their cell, box or figure, or a figure the margins; they are on the sheet all the same.</summary>
    OutsidePlace,

    /// <summary>Words overlap.</summary>
    Overlap,

    /// <summary>Labels of a figure overlap; what they say stands in the text as well.</summary>
    LabelsOverlap,

    /// <summary>A font is not in the file.</summary>
    FontNotEmbedded,

    /// <summary>The file cannot be read, or has another number of pages.</summary>
    Unreadable,
}
