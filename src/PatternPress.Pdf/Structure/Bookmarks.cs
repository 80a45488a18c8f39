using PatternPress.Typesetting.Pages;
using PdfSharp.Pdf;

namespace PatternPress.Pdf.Structure;

/// <summary>The outline that readers show beside the pages: all anchors that have a level.</summary>
static class Bookmarks
{
    public static void WriteTo(
        PdfDocument pdf,
        IReadOnlyList<PlacedAnchor> anchors,
        List<WrittenPage> pages
    )
    {
        // The bookmark of each level under which the next lower ones go.
        var chain = new List<(int Level, PdfOutline Outline)>();
        foreach (var anchor in anchors)
        {
            if (anchor.Level < 1 || anchor.Page < 1 || anchor.Page > pages.Count)
            {
                continue;
            }

            while (chain.Count > 0 && chain[^1].Level >= anchor.Level)
            {
                chain.RemoveAt(chain.Count - 1);
            }

            var page = pages[anchor.Page - 1];
            var siblings = chain.Count == 0 ? pdf.Outlines : chain[^1].Outline.Outlines;
            var outline = siblings.Add(anchor.Title, page.Dictionary, opened: chain.Count == 0);
            outline.PageDestinationType = PdfPageDestinationType.Xyz;
            outline.Left = 0;
            outline.Top = Math.Round(page.Flip(anchor.Y.Value), 2);
            chain.Add((anchor.Level, outline));
        }

        if (chain.Count > 0)
        {
            pdf.PageMode = PdfPageMode.UseOutlines;
        }
    }
}
