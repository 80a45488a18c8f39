using PatternPress.Pdf.Files;
using PdfSharp.Pdf;

namespace PatternPress.Pdf.Fonts;

/// <summary>
/// A face in the file: a Type 0 font whose character codes are the subset's glyph numbers (ISO 32000-1, 9.7). PDFsharp's
/// own fonts know neither kerning nor alternate figures, and name their subsets at random.
/// </summary>
static class EmbeddedFont
{
    const int Symbolic = 4;
    const int Italic = 64;

    public static PdfDictionary Write(PdfObjects objects, SubsetFont font, int index)
    {
        var name = $"{SubsetTag(index)}+{font.Source.PostScriptName}";
        var descendant = Descendant(objects, font, name);
        var dictionary = objects.AddDictionary();
        dictionary.Elements.SetName("/Type", "/Font");
        dictionary.Elements.SetName("/Subtype", "/Type0");
        dictionary.Elements.SetName("/BaseFont", "/" + name);
        dictionary.Elements.SetName("/Encoding", "/Identity-H");
        dictionary.Elements["/DescendantFonts"] = objects.Array(descendant.Reference!);
        dictionary.Elements["/ToUnicode"] = objects.AddStream(UnicodeMap.Write(font)).Reference;
        return dictionary;
    }

    static PdfDictionary Descendant(PdfObjects objects, SubsetFont font, string name)
    {
        var descendant = objects.AddDictionary();
        descendant.Elements.SetName("/Type", "/Font");
        descendant.Elements.SetName("/Subtype", "/CIDFontType2");
        descendant.Elements.SetName("/BaseFont", "/" + name);
        descendant.Elements.SetName("/CIDToGIDMap", "/Identity");
        var system = new PdfDictionary(objects.Document);
        system.Elements["/Registry"] = PdfObjects.Words("Adobe");
        system.Elements["/Ordering"] = PdfObjects.Words("Identity");
        system.Elements.SetInteger("/Supplement", 0);
        descendant.Elements["/CIDSystemInfo"] = system;
        descendant.Elements["/FontDescriptor"] = Descriptor(objects, font, name).Reference;
        descendant.Elements.SetInteger("/DW", 0);
        var widths = font
            .OldIds.Take(font.ShownCount)
            .Select(id => (PdfItem)new PdfInteger(font.WidthOf(id)));
        descendant.Elements["/W"] = objects.Array(new PdfInteger(0), objects.Array(widths));
        return descendant;
    }

    static PdfDictionary Descriptor(PdfObjects objects, SubsetFont font, string name)
    {
        var source = font.Source;
        var descriptor = objects.AddDictionary();
        descriptor.Elements.SetName("/Type", "/FontDescriptor");
        descriptor.Elements.SetName("/FontName", "/" + name);
        descriptor.Elements.SetInteger("/Flags", Symbolic | (source.ItalicAngle != 0 ? Italic : 0));
        var (left, bottom, right, top) = source.Bounds;
        descriptor.Elements["/FontBBox"] = objects.Numbers(
            Scaled(left),
            Scaled(bottom),
            Scaled(right),
            Scaled(top)
        );
        descriptor.Elements["/ItalicAngle"] = new PdfReal(Math.Round(source.ItalicAngle, 2));
        descriptor.Elements.SetInteger("/Ascent", Scaled(source.Ascender));
        descriptor.Elements.SetInteger("/Descent", Scaled(source.Descender));
        descriptor.Elements.SetInteger("/CapHeight", Scaled(source.CapHeight));
        descriptor.Elements.SetInteger("/XHeight", Scaled(source.XHeight));
        // TrueType does not tell how thick stems are: a usual estimate from the weight (400 gives 88, 700 gives 166).
        descriptor.Elements.SetInteger("/StemV", 50 + (int)Math.Pow(source.Weight / 65.0, 2));
        var file = TrueTypeSubset.Write(font);
        var stream = objects.AddStream(file);
        stream.Elements.SetInteger("/Length1", file.Length);
        descriptor.Elements["/FontFile2"] = stream.Reference;
        return descriptor;

        int Scaled(int units) => (int)Math.Round(units * 1000.0 / source.UnitsPerEm);
    }

    // Six capital letters that tell the subsets of a file apart; counted, so that the same file comes out every time.
    static string SubsetTag(int index)
    {
        var letters = new char[6];
        for (var i = letters.Length - 1; i >= 0; i--, index /= 26)
        {
            letters[i] = (char)('A' + (index % 26));
        }

        return new string(letters);
    }
}
