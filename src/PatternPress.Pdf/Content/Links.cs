using PatternPress.Pdf.Files;
using PatternPress.Pdf.Structure;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Pages;
using PdfSharp.Pdf;

namespace PatternPress.Pdf.Content;

/// <summary>
/// Writes link annotations by hand: PDFsharp's own carry a random name and the time of day, and named destinations of
/// PDFsharp may point to the wrong object. Links lead to a page and a height.
/// </summary>
sealed class Links(PdfObjects objects, IReadOnlyList<PlacedAnchor> anchors, List<WrittenPage> pages)
{
    const int Print = 4;

    readonly Dictionary<string, PlacedAnchor> named = anchors
        .Where(anchor => anchor.Name.Length > 0)
        .DistinctBy(anchor => anchor.Name)
        .ToDictionary(anchor => anchor.Name);

    public void Add(WrittenPage page, StructureTree structure, PageItem.Link link)
    {
        if (Action(link.Target) is not { } action)
        {
            return;
        }

        var place = link.Place;
        var annotation = objects.AddDictionary();
        annotation.Elements.SetName("/Type", "/Annot");
        annotation.Elements.SetName("/Subtype", "/Link");
        annotation.Elements["/Rect"] = objects.Numbers(
            place.X.Value,
            page.Flip(place.Bottom.Value),
            place.Right.Value,
            page.Flip(place.Y.Value)
        );
        annotation.Elements["/Border"] = objects.Array(
            new PdfInteger(0),
            new PdfInteger(0),
            new PdfInteger(0)
        );
        annotation.Elements.SetInteger("/F", Print);
        annotation.Elements["/Contents"] = PdfObjects.Words(link.Words);
        annotation.Elements[action.Key] = action.Value;
        annotation.Elements.SetInteger(
            "/StructParent",
            structure.AddAnnotation(link.Tag, annotation)
        );
        annotation.Elements["/P"] = page.Dictionary.Reference;
        if (page.Dictionary.Elements["/Annots"] is not PdfArray list)
        {
            list = objects.Array();
            page.Dictionary.Elements["/Annots"] = list;
        }

        list.Elements.Add(annotation.Reference!);
    }

    KeyValuePair<string, PdfItem>? Action(LinkTarget target)
    {
        if (target is LinkTarget.ToWeb web)
        {
            var action = new PdfDictionary(objects.Document);
            action.Elements.SetName("/S", "/URI");
            action.Elements["/URI"] = PdfObjects.Words(InAscii(web.Address));
            return new("/A", action);
        }

        var anchor = target switch
        {
            LinkTarget.ToAnchor { Name: var name } => named.GetValueOrDefault(name),
            LinkTarget.ToAnchorAt { Index: var index } when index < anchors.Count => anchors[index],
            _ => null,
        };
        if (anchor is null || anchor.Page < 1 || anchor.Page > pages.Count)
        {
            return null;
        }

        var page = pages[anchor.Page - 1];
        return new(
            "/Dest",
            objects.Array(
                page.Dictionary.Reference!,
                PdfObjects.Name("XYZ"),
                new PdfReal(0),
                new PdfReal(Math.Round(page.Flip(anchor.Y.Value), 2)),
                PdfNull.Value
            )
        );
    }

    // An address may hold ASCII only; other characters are written as their UTF-8 bytes in per cent (RFC 3987, 3.1).
    static string InAscii(string address) =>
        string.Concat(
            address
                .EnumerateRunes()
                .Select(rune =>
                    rune.IsAscii && rune.Value > ' '
                        ? rune.ToString()
                        : Uri.EscapeDataString(rune.ToString())
                )
        );
}
