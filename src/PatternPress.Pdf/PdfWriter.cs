using PatternPress.Pdf.Content;
using PatternPress.Pdf.Files;
using PatternPress.Pdf.Fonts;
using PatternPress.Pdf.Images;
using PatternPress.Pdf.Structure;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Pages;
using PdfSharp.Pdf;

namespace PatternPress.Pdf;

/// <summary>
/// Writes typeset pages as an accessible PDF (tagged after PDF/UA-1). The same pages give the same bytes. Files may be
/// written on several threads at once.
/// </summary>
public sealed class PdfWriter(PdfOptions? options = null) : IPagesWriter
{
    readonly PdfOptions options = options ?? PdfOptions.Default;

    /// <summary>The PDF file's content.</summary>
    public static byte[] Write(TypesetDocument document, PdfOptions? options = null) =>
        new PdfWriter(options).Write(document);

    /// <inheritdoc/>
    public byte[] Write(TypesetDocument document)
    {
        using var pdf = new PdfDocument();
        FileSettings.Apply(pdf, document.Information, options.Tagged);
        var objects = new PdfObjects(pdf, options.Compressed);
        var fonts = FontTable.Collect(document.Pages);
        var structure = new StructureTree(objects, document.Information.Language);
        var pages = document
            .Pages.Select(page => new WrittenPage(page, objects.AddPage(page)))
            .ToList();
        var links = new Links(objects, document.Anchors, pages);
        var images = new ImageTable(options);
        foreach (var page in pages)
        {
            var painter = new PagePainter(page, fonts, images, structure, links, options);
            page.Dictionary.Elements["/Contents"] = objects.AddStream(painter.Paint()).Reference;
        }

        fonts.WriteTo(objects, pages);
        images.WriteTo(objects, pages);
        if (options.Tagged)
        {
            structure.WriteTo(pdf);
        }

        Bookmarks.WriteTo(pdf, document.Anchors, pages);
        using var saved = new MemoryStream();
        pdf.Save(saved, closeStream: false);
        return FileFinisher.Finish(saved.ToArray(), document.Information, options);
    }
}
