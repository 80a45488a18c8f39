using PatternPress.Typesetting;
using PdfSharp.Pdf;

namespace PatternPress.Pdf.Files;

/// <summary>What the file says about itself outside its pages.</summary>
static class FileSettings
{
    public static void Apply(PdfDocument pdf, DocumentInformation information, bool tagged)
    {
        pdf.Version = 17;
        // Otherwise every page gets a transparency group that nothing here needs.
        pdf.Options.ColorMode = PdfColorMode.Undefined;
        pdf.Info.Title = information.Title;
        pdf.Info.Author = information.Author;
        pdf.Info.Subject = information.Subject;
        pdf.Info.Keywords = string.Join(", ", information.Keywords);
        pdf.Info.Creator = information.Creator;
        pdf.Info.CreationDate = information.Date.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        var catalog = pdf.Internals.Catalog;
        catalog.Elements["/Lang"] = PdfObjects.Words(information.Language);
        if (tagged)
        {
            var marks = new PdfDictionary(pdf);
            marks.Elements.SetBoolean("/Marked", true);
            catalog.Elements["/MarkInfo"] = marks;
        }

        var preferences = new PdfDictionary(pdf);
        preferences.Elements.SetBoolean("/DisplayDocTitle", true);
        catalog.Elements["/ViewerPreferences"] = preferences;
    }
}
