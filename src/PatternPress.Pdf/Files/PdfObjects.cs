using System.IO.Compression;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Pages;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;

namespace PatternPress.Pdf.Files;

/// <summary>Adds objects to a file.</summary>
sealed class PdfObjects(PdfDocument document, bool compressed)
{
    public PdfDocument Document { get; } = document;

    /// <summary>A page of the size of its sheet, with the boxes of ISO 32000-1, 14.11.2, where it is to be trimmed.</summary>
    public PdfPage AddPage(Page content)
    {
        var (page, paper) = (Document.AddPage(), content.Paper);
        page.MediaBox = new PdfRectangle(
            new PdfSharp.Drawing.XPoint(0, 0),
            new PdfSharp.Drawing.XPoint(paper.Width.Value, paper.Height.Value)
        );
        Set("/TrimBox", content.Trim);
        Set("/BleedBox", content.Bleed);
        return page;

        void Set(string key, PageRect? box)
        {
            if (box is { } place)
            {
                page.Elements[key] = Numbers(
                    place.X.Value,
                    (paper.Height - place.Bottom).Value,
                    place.Right.Value,
                    (paper.Height - place.Y).Value
                );
            }
        }
    }

    /// <summary>A dictionary that other objects refer to.</summary>
    public PdfDictionary AddDictionary()
    {
        var dictionary = new PdfDictionary(Document);
        Document.Internals.AddObject(dictionary);
        return dictionary;
    }

    /// <summary>
    /// A stream. It is compressed here, as a complete zlib stream: PDFsharp's own compression leaves out the checksum at
    /// the end, which strict readers complain about.
    /// </summary>
    public PdfDictionary AddStream(byte[] content)
    {
        var stream = AddDictionary();
        if (compressed)
        {
            stream.Elements.SetName("/Filter", "/FlateDecode");
            content = Deflated(content);
        }

        stream.CreateStream(content);
        return stream;
    }

    /// <summary>A stream whose content is packed already, by the filter named.</summary>
    public PdfDictionary AddPacked(byte[] content, string filter)
    {
        var stream = AddDictionary();
        stream.Elements.SetName("/Filter", filter);
        stream.CreateStream(content);
        return stream;
    }

    public PdfArray Array(params IEnumerable<PdfItem> items) => new(Document, [.. items]);

    public PdfArray Numbers(params IEnumerable<double> numbers) =>
        Array(numbers.Select(number => (PdfItem)new PdfReal(Math.Round(number, 3))));

    /// <summary>A text string that may hold any character.</summary>
    public static PdfString Words(string text) =>
        new(
            text,
            text.All(char.IsAscii) ? PdfStringEncoding.PDFDocEncoding : PdfStringEncoding.Unicode
        );

    /// <summary>A name object; the slash is added.</summary>
    public static PdfName Name(string name) => new("/" + name);

    internal static byte[] Deflated(byte[] content)
    {
        using var target = new MemoryStream();
        using (var zlib = new ZLibStream(target, CompressionLevel.Optimal, leaveOpen: true))
        {
            zlib.Write(content);
        }

        return target.ToArray();
    }
}
