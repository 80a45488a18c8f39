namespace PatternPress.Typesetting.Pages;

/// <summary>The kinds of faults that inspecting a page finds.</summary>
public enum PageFindingKind
{
    /// <summary>The ink of two pieces of text overlaps.</summary>
    WordsOverlap,

    /// <summary>Ink of text leaves the cell, box or figure it belongs to.</summary>
    OutsidePlace,

    /// <summary>Ink of text leaves the sheet.</summary>
    OutsidePage,
}
