using PatternPress.Pdf.Files;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Pages;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;

namespace PatternPress.Pdf.Structure;

/// <summary>
/// The structure tree of a file (ISO 32000-1, 14.7): which marked content of which page belongs to which element. A tag
/// met again on a later page is the same element.
/// </summary>
sealed class StructureTree
{
    readonly PdfObjects objects;
    readonly PdfDictionary root;
    readonly Element document;
    readonly Dictionary<Tag, Element> elements = new(ReferenceEqualityComparer.Instance);
    readonly Stack<Element> open = new();
    readonly List<PdfItem> parents = [];
    WrittenPage? page;
    PdfArray? marksOfPage;

    public StructureTree(PdfObjects objects, string language)
    {
        this.objects = objects;
        root = objects.AddDictionary();
        document = new Element(objects.AddDictionary(), null);
        document.Dictionary.Elements.SetName("/Type", "/StructElem");
        document.Dictionary.Elements.SetName("/S", "/Document");
        document.Dictionary.Elements["/P"] = root.Reference;
        document.Dictionary.Elements["/Lang"] = PdfObjects.Words(language);
    }

    /// <summary>What follows stands on this page.</summary>
    public void Begin(WrittenPage next)
    {
        page = next;
        marksOfPage = objects.Array();
        objects.Document.Internals.AddObject(marksOfPage);
        next.Dictionary.Elements.SetInteger("/StructParents", parents.Count);
        // Readers step through links in the order of the structure, not of their places.
        next.Dictionary.Elements.SetName("/Tabs", "/S");
        parents.Add(marksOfPage.Reference!);
        open.Clear();
        open.Push(document);
    }

    public void Open(Tag tag, PageRect? place)
    {
        var parent = open.Peek();
        if (!elements.TryGetValue(tag, out var element))
        {
            element = new Element(objects.AddDictionary(), tag);
            elements.Add(tag, element);
            Describe(element, parent, place);
            parent.Kids.Add(element.Dictionary.Reference!);
        }

        open.Push(element);
    }

    public void Close() => open.Pop();

    /// <summary>The number of the next marked content, which belongs to the innermost open element.</summary>
    public int NextMark()
    {
        var number = marksOfPage!.Elements.Count;
        var element = open.Peek();
        marksOfPage.Elements.Add(element.Dictionary.Reference!);
        element.AddMark(objects, page!, number);
        return number;
    }

    /// <summary>Ties an annotation to its element; the number of the annotation in the parent tree.</summary>
    public int AddAnnotation(Tag tag, PdfDictionary annotation)
    {
        var element = elements[tag];
        var reference = new PdfDictionary(objects.Document);
        reference.Elements.SetName("/Type", "/OBJR");
        reference.Elements["/Obj"] = annotation.Reference;
        reference.Elements["/Pg"] = page!.Dictionary.Reference;
        element.Kids.Add(reference);
        parents.Add(element.Dictionary.Reference!);
        return parents.Count - 1;
    }

    public void WriteTo(PdfDocument pdf)
    {
        document.WriteKids(objects);
        foreach (var element in elements.Values)
        {
            element.WriteKids(objects);
        }

        var tree = objects.AddDictionary();
        var numbers = objects.Array();
        for (var i = 0; i < parents.Count; i++)
        {
            numbers.Elements.Add(new PdfInteger(i));
            numbers.Elements.Add(parents[i]);
        }

        tree.Elements["/Nums"] = numbers;
        root.Elements.SetName("/Type", "/StructTreeRoot");
        root.Elements["/K"] = document.Dictionary.Reference;
        root.Elements["/ParentTree"] = tree.Reference;
        root.Elements.SetInteger("/ParentTreeNextKey", parents.Count);
        pdf.Internals.Catalog.Elements["/StructTreeRoot"] = root.Reference;
    }

    void Describe(Element element, Element parent, PageRect? place)
    {
        var (tag, dictionary) = (element.Tag!, element.Dictionary);
        dictionary.Elements.SetName("/S", "/" + Roles.NameOf(tag.Role));
        dictionary.Elements["/P"] = parent.Dictionary.Reference;
        Set("/Alt", tag.Alt);
        Set("/ActualText", tag.ActualText);
        Set("/Lang", tag.Language);
        if (Attributes(tag, parent.Tag, place) is { } attributes)
        {
            dictionary.Elements["/A"] = attributes;
        }

        void Set(string key, string? words)
        {
            if (words is not null)
            {
                dictionary.Elements[key] = PdfObjects.Words(words);
            }
        }
    }

    PdfDictionary? Attributes(Tag tag, Tag? parent, PageRect? place)
    {
        var attributes = new PdfDictionary(objects.Document);
        switch (tag.Role)
        {
            case TagRole.HeaderCell
            or TagRole.DataCell when tag.Scope != HeaderScope.None || tag.ColumnSpan > 1:
                attributes.Elements.SetName("/O", "/Table");
                if (tag.Scope != HeaderScope.None)
                {
                    attributes.Elements.SetName("/Scope", "/" + tag.Scope);
                }

                if (tag.ColumnSpan > 1)
                {
                    attributes.Elements.SetInteger("/ColSpan", tag.ColumnSpan);
                }

                return attributes;
            case TagRole.Table when tag.Summary is not null:
                attributes.Elements.SetName("/O", "/Table");
                attributes.Elements["/Summary"] = PdfObjects.Words(tag.Summary);
                return attributes;
            case TagRole.List:
                attributes.Elements.SetName("/O", "/List");
                attributes.Elements.SetName("/ListNumbering", tag.Numbered ? "/Decimal" : "/Disc");
                return attributes;
            case TagRole.Figure or TagRole.Formula when place is { } box:
                attributes.Elements.SetName("/O", "/Layout");
                // A swatch in a line of text is no block.
                var inline = parent is not null && Roles.HoldsContent(parent.Role, isText: false);
                attributes.Elements.SetName("/Placement", inline ? "/Inline" : "/Block");
                attributes.Elements["/BBox"] = objects.Numbers(
                    box.X.Value,
                    page!.Flip(box.Bottom.Value),
                    box.Right.Value,
                    page.Flip(box.Y.Value)
                );
                return attributes;
            default:
                return null;
        }
    }

    /// <summary>An element of the tree and what stands in it, in reading order.</summary>
    sealed class Element(PdfDictionary dictionary, Tag? tag)
    {
        PdfReference? firstPage;

        public PdfDictionary Dictionary { get; } = dictionary;

        public Tag? Tag { get; } = tag;

        public List<PdfItem> Kids { get; } = [];

        public void AddMark(PdfObjects objects, WrittenPage page, int number)
        {
            var reference = page.Dictionary.Reference!;
            firstPage ??= reference;
            if (firstPage == reference)
            {
                Kids.Add(new PdfInteger(number));
                return;
            }

            var mark = new PdfDictionary(objects.Document);
            mark.Elements.SetName("/Type", "/MCR");
            mark.Elements["/Pg"] = reference;
            mark.Elements.SetInteger("/MCID", number);
            Kids.Add(mark);
        }

        public void WriteKids(PdfObjects objects)
        {
            if (firstPage is not null)
            {
                Dictionary.Elements["/Pg"] = firstPage;
            }

            if (Kids.Count == 1)
            {
                Dictionary.Elements["/K"] = Kids[0];
            }
            else if (Kids.Count > 1)
            {
                Dictionary.Elements["/K"] = objects.Array(Kids);
            }
        }
    }
}
