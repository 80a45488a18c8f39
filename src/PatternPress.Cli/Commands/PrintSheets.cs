using PatternPress.Booklet.Words;
using PatternPress.Pdf;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Imposition;

namespace PatternPress.Cli.Commands;

/// <summary>Places finished pages on the sheets of a printer.</summary>
internal static class PrintSheets
{
    /// <summary>The file for the printer; null where its pages are printed as they are.</summary>
    /// <param name="pages">The pages in their order.</param>
    /// <param name="sheet">The size of a sheet, upright.</param>
    public static byte[]? Write(
        TypesetDocument pages,
        Printing printing,
        PaperSize sheet,
        PdfOptions options
    )
    {
        TypesetDocument sheets = pages;
        if (printing.SaddleStitched)
        {
            sheets = SaddleStitch.Impose(sheets, sheet, printing.PaperThickness);
            // What is read in the order of printing makes no sense: such a file claims nothing.
            options = options with
            {
                Tagged = false,
            };
        }
        if (printing.CropMarks || printing.Bleed > Points.Zero)
        {
            sheets = PressSheet.Place(sheets, printing.Bleed, printing.CropMarks);
        }
        return ReferenceEquals(sheets, pages) ? null : PdfWriter.Write(sheets, options);
    }
}
