using System.Collections.Immutable;
using PatternPress.Pdf.Files;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Pages;
using PdfSharp.Pdf;

namespace PatternPress.Pdf.Fonts;

/// <summary>The faces of a document in the order in which they first appear, each with the glyphs that its pages use.</summary>
sealed class FontTable
{
    readonly List<SubsetFont> fonts = [];
    readonly Dictionary<FontFace, int> indices = [];

    public int Count => fonts.Count;

    public SubsetFont this[int index] => fonts[index];

    public static FontTable Collect(IEnumerable<Page> pages)
    {
        var table = new FontTable();
        foreach (var page in pages)
        {
            table.Collect(page.Items);
        }

        foreach (var font in table.fonts)
        {
            font.Close();
        }

        return table;
    }

    public int IndexOf(FontFace face) => indices[face];

    public void WriteTo(PdfObjects objects, List<WrittenPage> pages)
    {
        var written = fonts
            .Select((font, index) => EmbeddedFont.Write(objects, font, index))
            .ToList();
        foreach (var page in pages)
        {
            var resources = new PdfDictionary(objects.Document);
            if (page.FontsUsed.Count > 0)
            {
                var names = new PdfDictionary(objects.Document);
                foreach (var index in page.FontsUsed)
                {
                    names.Elements[$"/F{index}"] = written[index].Reference;
                }

                resources.Elements["/Font"] = names;
            }

            page.Dictionary.Elements["/Resources"] = resources;
        }
    }

    void Collect(ImmutableArray<PageItem> items)
    {
        foreach (var item in items)
        {
            switch (item)
            {
                case PageItem.Text { Shape.Glyphs.IsEmpty: false } text:
                    if (!indices.TryGetValue(text.Face, out var index))
                    {
                        index = fonts.Count;
                        indices.Add(text.Face, index);
                        fonts.Add(new SubsetFont(text.Face));
                    }

                    fonts[index].Use(text.Shape);
                    break;
                case PageItem.Clip clip:
                    Collect(clip.Items);
                    break;
            }
        }
    }
}
