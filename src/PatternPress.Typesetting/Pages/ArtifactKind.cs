namespace PatternPress.Typesetting.Pages;

/// <summary>Why something on a page is not part of what is read aloud.</summary>
public enum ArtifactKind
{
    /// <summary>Rules, borders, backgrounds, leader dots, repeated table headers.</summary>
    Layout,

    /// <summary>Running header.</summary>
    Header,

    /// <summary>Running footer.</summary>
    Footer,

    /// <summary>Behind or over the whole page: background drawings, the draft mark.</summary>
    Background,

    /// <summary>For the printer alone, outside what is left after trimming: crop marks.</summary>
    PrinterMarks,
}
