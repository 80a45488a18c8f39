using PatternPress.Typesetting;

namespace PatternPress.Booklet.Words;

/// <summary>How a document is printed, where that differs from pages of a whole sheet in colour.</summary>
public sealed record Printing
{
    /// <summary>The variant of the looks; empty for the usual looks.</summary>
    public string Looks { get; init; } = "";

    /// <summary>Whether a page is half a sheet: half-letter or A5.</summary>
    public bool HalfPages { get; init; }

    /// <summary>Whether two pages stand on each side of a sheet, to be folded and stapled. Half pages only.</summary>
    public bool SaddleStitched { get; init; }

    /// <summary>The thickness of the paper, by which inner sheets are pushed outwards where they are folded.</summary>
    public Points PaperThickness { get; init; }

    /// <summary>Whether nothing but black is printed.</summary>
    public bool BlackOnly { get; init; }

    /// <summary>How far the print reaches past the edge of the page, to be trimmed off.</summary>
    public Points Bleed { get; init; }

    /// <summary>Whether marks outside the page say where it is trimmed.</summary>
    public bool CropMarks { get; init; }

    /// <summary>The size of its pages, on sheets of a size.</summary>
    public PaperSize PageOf(PaperSize sheet) => HalfPages ? sheet.Half() : sheet;
}
