using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics.Operations;
using UglyToad.PdfPig.Graphics.Operations.MarkedContent;
using UglyToad.PdfPig.Graphics.Operations.PathPainting;
using UglyToad.PdfPig.Graphics.Operations.SpecialGraphicsState;
using UglyToad.PdfPig.Graphics.Operations.TextObjects;
using UglyToad.PdfPig.Graphics.Operations.TextShowing;
using UglyToad.PdfPig.Tokens;

namespace PatternPress.Tests.Pdf;

/// <summary>
/// Walks a file's tag tree and content streams and lists what PDF/UA-1 (ISO 14289-1, clause 7) would object to: content
/// without a mark, marks that cross text objects, figures without words, header cells without scope, headings that skip a
/// level, links without their annotation or to nowhere, elements in the wrong place, tables with rows of unequal width,
/// lists that do not say how they are numbered, fonts that are not embedded, bookmarks that are missing.
/// </summary>
sealed class TagTree
{
    static readonly Dictionary<string, string[]> AllowedParents = new()
    {
        ["LI"] = ["L"],
        ["Lbl"] = ["LI", "Note"],
        ["LBody"] = ["LI"],
        ["TR"] = ["Table", "THead", "TBody"],
        ["TH"] = ["TR"],
        ["TD"] = ["TR"],
        ["THead"] = ["Table"],
        ["TBody"] = ["Table"],
        ["TOCI"] = ["TOC"],
    };

    static readonly Dictionary<string, string[]> AllowedChildren = new()
    {
        ["L"] = ["LI", "L", "Caption"],
        ["LI"] = ["Lbl", "LBody"],
        ["Table"] = ["TR", "THead", "TBody", "Caption"],
        ["TR"] = ["TH", "TD"],
        ["TOC"] = ["TOC", "TOCI"],
    };

    readonly PdfDocument document;
    readonly List<string> faults = [];
    readonly Dictionary<(int Page, int Mark), string> owners = [];
    readonly Dictionary<IndirectReference, int> pageNumbers = [];
    readonly Dictionary<IndirectReference, IndirectReference> annotationOwners = [];
    int lastHeading;

    TagTree(PdfDocument document) => this.document = document;

    /// <summary>The structure types in reading order, with how deep each is nested.</summary>
    public List<(int Depth, string Type)> Elements { get; } = [];

    public IReadOnlyList<string> Faults => faults;

    /// <summary>Whether the file says of itself that it follows PDF/UA-1.</summary>
    public bool ClaimsAccessibility { get; private set; }

    /// <summary>Numbered items that hold a diagram: their number in the tree, and whether a link on their label leads to its page.</summary>
    public List<(string Diagram, bool Linked)> Steps { get; } = [];

    /// <summary>Entries of tables of contents, and whether each is a link.</summary>
    public List<bool> ContentsEntries { get; } = [];

    public int Bookmarks { get; private set; }

    public int TablesWithoutHeaders { get; private set; }

    /// <summary>Links within the file.</summary>
    public int InnerLinks { get; private set; }

    public static TagTree Check(byte[] pdf)
    {
        using var document = PdfDocument.Open(pdf);
        var tree = new TagTree(document);
        tree.Check();
        return tree;
    }

    void Check()
    {
        var catalog = document.Structure.Catalog.CatalogDictionary;
        Expect(
            Words(catalog, "Lang") is { Length: >= 2 } language
                && language.All(c => char.IsAsciiLetterOrDigit(c) || c == '-'),
            "the file names no language"
        );
        Expect(
            Dictionary(catalog, "MarkInfo") is { } marks
                && Get(marks, "Marked") is BooleanToken { Data: true },
            "the file does not say that it is tagged"
        );
        Expect(
            Dictionary(catalog, "ViewerPreferences") is { } preferences
                && Get(preferences, "DisplayDocTitle") is BooleanToken { Data: true },
            "the title is not shown"
        );
        Expect(!string.IsNullOrWhiteSpace(document.Information.Title), "the file has no title");
        NumberPages();
        CheckMetadata();
        CheckFonts();
        CheckBookmarks(catalog);
        var root = Dictionary(catalog, "StructTreeRoot")!;
        foreach (var kid in Kids(root))
        {
            Walk(kid, null, 0, null);
        }

        foreach (var page in document.GetPages())
        {
            CheckContent(page);
        }

        CheckParents(root);
        // A single page is at hand as it is.
        Expect(
            lastHeading == 0 || Bookmarks > 0 || pageNumbers.Count == 1,
            "the file has headings and no bookmarks"
        );
    }

    // ISO 14289-1, clause 5: the claim, and ISO 16684-1: the title.
    void CheckMetadata()
    {
        Expect(document.TryGetXmpMetadata(out var metadata), "the file has no metadata");
        if (metadata?.GetXDocument() is not { } xmp)
        {
            return;
        }

        var part = xmp.Descendants("{http://www.aiim.org/pdfua/ns/id/}part").FirstOrDefault();
        ClaimsAccessibility = part?.Value == "1";
        var title = xmp.Descendants("{http://purl.org/dc/elements/1.1/}title").FirstOrDefault();
        Expect(!string.IsNullOrWhiteSpace(title?.Value), "the metadata have no title");
    }

    // ISO 14289-1, 7.21: every font embedded, its characters known.
    void CheckFonts()
    {
        foreach (var page in pageNumbers.Keys)
        {
            var dictionary = (DictionaryToken)document.Structure.GetObject(page).Data;
            if (
                Dictionary(dictionary, "Resources") is not { } resources
                || Dictionary(resources, "Font") is not { } fonts
            )
            {
                continue;
            }

            foreach (var token in fonts.Data.Values)
            {
                var font = (DictionaryToken)Resolved(token)!;
                var name = Name(font, "BaseFont") ?? "?";
                Expect(
                    font.ContainsKey(NameToken.Create("ToUnicode")),
                    $"{name} has no characters"
                );
                Expect(name.Length > 7 && name[6] == '+', $"{name} is no subset");
                var descendant = (Resolved(Get(font, "DescendantFonts")) as ArrayToken)?.Data
                    is [var first, ..]
                    ? Resolved(first) as DictionaryToken
                    : null;
                Expect(
                    descendant is not null
                        && Dictionary(descendant, "FontDescriptor") is { } descriptor
                        && descriptor.ContainsKey(NameToken.Create("FontFile2")),
                    $"{name} is not embedded"
                );
            }
        }
    }

    void CheckBookmarks(DictionaryToken catalog)
    {
        if (Dictionary(catalog, "Outlines") is { } outlines)
        {
            Follow(outlines, 0);
        }

        void Follow(DictionaryToken parent, int depth)
        {
            for (
                var item = Dictionary(parent, "First");
                item is not null && depth < 8;
                item = Dictionary(item, "Next")
            )
            {
                Bookmarks++;
                Expect(PageOf(item) > 0, "a bookmark leads nowhere");
                Follow(item, depth + 1);
            }
        }
    }

    // The page that a bookmark or link leads to; 0 for none.
    int PageOf(DictionaryToken item) =>
        Resolved(Get(item, "Dest")) is ArrayToken { Data: [IndirectReferenceToken page, ..] }
        && pageNumbers.TryGetValue(page.Data, out var number)
            ? number
            : 0;

    void NumberPages()
    {
        var number = 0;
        Number(document.Structure.Catalog.CatalogDictionary, "Pages");

        void Number(DictionaryToken parent, string key)
        {
            foreach (var reference in References(parent, key))
            {
                var node = (DictionaryToken)document.Structure.GetObject(reference).Data;
                if (node.ContainsKey(NameToken.Create("Kids")))
                {
                    Number(node, "Kids");
                }
                else
                {
                    pageNumbers[reference] = ++number;
                }
            }
        }
    }

    void Walk(IToken token, DictionaryToken? parent, int depth, IndirectReference? page)
    {
        if (token is not IndirectReferenceToken { Data: var reference })
        {
            return;
        }

        var element = (DictionaryToken)document.Structure.GetObject(reference).Data;
        var type = Name(element, "S") ?? "?";
        var parentType = parent is null ? null : Name(parent, "S");
        Elements.Add((depth, type));
        CheckElement(element, type, parentType);
        var own = Get(element, "Pg") is IndirectReferenceToken { Data: var pg } ? pg : page;
        var annotations = 0;
        foreach (var kid in Kids(element))
        {
            switch (kid)
            {
                case NumericToken mark:
                    Owns(own, mark.Int, type);
                    break;
                case DictionaryToken marked when Name(marked, "Type") == "MCR":
                    Owns(
                        ((IndirectReferenceToken)Get(marked, "Pg")!).Data,
                        ((NumericToken)Get(marked, "MCID")!).Int,
                        type
                    );
                    break;
                case DictionaryToken of when Name(of, "Type") == "OBJR":
                    annotations++;
                    annotationOwners[((IndirectReferenceToken)Get(of, "Obj")!).Data] = reference;
                    break;
                default:
                    Walk(kid, element, depth + 1, own);
                    break;
            }
        }

        Expect(type != "Link" || annotations > 0, "a link has no annotation");
        switch (type)
        {
            case "TOCI":
                ContentsEntries.Add(LinkedPages(element).Count > 0);
                break;
            case "LI" when parent is not null && IsNumbered(parent):
                CheckStep(element);
                break;
            case "Table":
                CheckTable(element);
                break;
        }
    }

    bool IsNumbered(DictionaryToken list) =>
        Dictionary(list, "A") is { } attributes && Name(attributes, "ListNumbering") == "Decimal";

    // A numbered item with a diagram of its own: the link on its number leads to the diagram's page.
    void CheckStep(DictionaryToken item)
    {
        var label = ChildrenOf(item).FirstOrDefault(kid => Name(kid, "S") == "Lbl");
        foreach (var figure in ChildrenOf(item).SelectMany(kid => Figures(kid, 0)))
        {
            var page = Get(figure, "Pg") is IndirectReferenceToken { Data: var pg }
                ? pageNumbers.GetValueOrDefault(pg)
                : 0;
            Steps.Add(
                (Words(figure, "Alt") ?? "", label is not null && LinkedPages(label).Contains(page))
            );
        }
    }

    // Diagrams in an element, without the small drawings that stand in a line.
    IEnumerable<DictionaryToken> Figures(DictionaryToken element, int depth)
    {
        if (
            Name(element, "S") == "Figure"
            && Dictionary(element, "A") is { } layout
            && Name(layout, "Placement") == "Block"
        )
        {
            return [element];
        }

        // Steps within a step have numbers of their own.
        return depth > 8 || Name(element, "S") is "L"
            ? []
            : ChildrenOf(element).SelectMany(kid => Figures(kid, depth + 1));
    }

    // The pages that links in an element lead to.
    HashSet<int> LinkedPages(DictionaryToken element)
    {
        var pages = new HashSet<int>();
        Look(element, 0);
        return pages;

        void Look(DictionaryToken at, int depth)
        {
            foreach (var kid in Kids(at).OfType<DictionaryToken>())
            {
                if (
                    Name(kid, "Type") == "OBJR"
                    && Dictionary(kid, "Obj") is { } annotation
                    && PageOf(annotation) is > 0 and var page
                )
                {
                    pages.Add(page);
                }
            }

            if (depth < 8)
            {
                foreach (var kid in ChildrenOf(at))
                {
                    Look(kid, depth + 1);
                }
            }
        }
    }

    // Rows of one width, header cells in it (ISO 14289-1, 7.5).
    void CheckTable(DictionaryToken table)
    {
        var rows = ChildrenOf(table)
            .SelectMany(part => Name(part, "S") == "TR" ? [part] : ChildrenOf(part))
            .Where(row => Name(row, "S") == "TR")
            .ToList();
        var widths = rows.Select(row => ChildrenOf(row).Sum(SpanOf)).Distinct().ToList();
        Expect(widths.Count == 1, $"a table has rows of {string.Join(", ", widths)} columns");
        if (!rows.SelectMany(ChildrenOf).Any(cell => Name(cell, "S") == "TH"))
        {
            TablesWithoutHeaders++;
        }
    }

    int SpanOf(DictionaryToken cell) =>
        Dictionary(cell, "A") is { } attributes && Get(attributes, "ColSpan") is NumericToken span
            ? span.Int
            : 1;

    IEnumerable<DictionaryToken> ChildrenOf(DictionaryToken element) =>
        Kids(element)
            .OfType<IndirectReferenceToken>()
            .Select(kid => document.Structure.GetObject(kid.Data).Data)
            .OfType<DictionaryToken>();

    void CheckElement(DictionaryToken element, string type, string? parent)
    {
        if (AllowedParents.TryGetValue(type, out var parents))
        {
            Expect(parent is not null && parents.Contains(parent), $"{type} stands in {parent}");
        }

        if (parent is not null && AllowedChildren.TryGetValue(parent, out var children))
        {
            Expect(children.Contains(type), $"{parent} holds {type}");
        }

        switch (type)
        {
            case "Figure" or "Formula":
                Expect(!string.IsNullOrWhiteSpace(Words(element, "Alt")), "a figure has no words");
                Expect(
                    Dictionary(element, "A") is { } layout
                        && Get(layout, "BBox") is ArrayToken { Data.Count: 4 },
                    "a figure has no box"
                );
                break;
            case "L":
                Expect(
                    Dictionary(element, "A") is { } list && Name(list, "ListNumbering") is not null,
                    "a list does not say how it is numbered"
                );
                break;
            case "TH":
                Expect(
                    Dictionary(element, "A") is { } table
                        && Name(table, "Scope") is "Column" or "Row" or "Both",
                    "a header cell has no scope"
                );
                break;
            case ['H', >= '1' and <= '6']:
                var level = type[1] - '0';
                Expect(level <= lastHeading + 1, $"heading {level} follows heading {lastHeading}");
                lastHeading = level;
                break;
        }
    }

    void Owns(IndirectReference? page, int mark, string type)
    {
        var number = page is { } known && pageNumbers.TryGetValue(known, out var found) ? found : 0;
        Expect(number > 0, $"{type} has content on no page");
        Expect(
            owners.TryAdd((number, mark), type),
            $"mark {mark} of page {number} belongs to two elements"
        );
    }

    void CheckContent(Page page)
    {
        // What is open, outermost first: T text object, A artifact, M marked content, S span within it.
        var open = new Stack<char>();
        var marks = new HashSet<int>();
        var clipped = 0;
        foreach (var operation in page.Operations)
        {
            switch (operation)
            {
                case BeginText:
                    Expect(
                        !open.Contains('T'),
                        $"page {page.Number}: a text object within a text object"
                    );
                    open.Push('T');
                    break;
                case EndText:
                    Expect(
                        open.Count > 0 && open.Pop() == 'T',
                        $"page {page.Number}: a text object ends inside a mark begun in it"
                    );
                    break;
                case BeginMarkedContentWithProperties begin:
                    Begin(begin, open, marks, page.Number);
                    break;
                case BeginMarkedContent:
                    open.Push('S');
                    break;
                case EndMarkedContent:
                    Expect(
                        open.Count > 0 && open.Pop() != 'T',
                        $"page {page.Number}: a mark ends inside a text object"
                    );
                    break;
                case Push:
                    clipped++;
                    break;
                case Pop:
                    clipped--;
                    break;
                default:
                    Expect(
                        !Shows(operation) || open.Contains('A') || open.Contains('M'),
                        $"page {page.Number}: {operation.Operator} outside any mark"
                    );
                    break;
            }
        }

        Expect(open.Count == 0 && clipped == 0, $"page {page.Number}: something is left open");
        foreach (var (number, mark) in owners.Keys.Where(owner => owner.Page == page.Number))
        {
            Expect(marks.Contains(mark), $"page {number} has no mark {mark}");
        }
    }

    void Begin(
        BeginMarkedContentWithProperties begin,
        Stack<char> open,
        HashSet<int> marks,
        int page
    )
    {
        if (begin.Name.Data == "Artifact")
        {
            Expect(
                !open.Contains('A') && !open.Contains('M'),
                $"page {page}: an artifact within a mark"
            );
            Expect(
                begin.Properties is { } kind
                    && Name(kind, "Type") is "Pagination" or "Layout" or "Background" or "Page",
                $"page {page}: an artifact that does not say of what kind it is"
            );
            open.Push('A');
        }
        else if (begin.Properties is { } properties && Get(properties, "MCID") is NumericToken mark)
        {
            Expect(
                !open.Contains('A') && !open.Contains('M'),
                $"page {page}: mark {mark.Int} within another mark"
            );
            Expect(marks.Add(mark.Int), $"page {page}: mark {mark.Int} twice");
            Expect(
                owners.TryGetValue((page, mark.Int), out var owner) && owner == begin.Name.Data,
                $"page {page}: mark {mark.Int} ({begin.Name.Data}) belongs to {owner ?? "no element"}"
            );
            open.Push('M');
        }
        else
        {
            open.Push('S');
        }
    }

    void CheckParents(DictionaryToken root)
    {
        var tree = Dictionary(root, "ParentTree")!;
        var numbers = ((ArrayToken)Get(tree, "Nums")!).Data;
        var parents = new Dictionary<int, IToken>();
        for (var i = 0; i + 1 < numbers.Count; i += 2)
        {
            parents[((NumericToken)numbers[i]).Int] = numbers[i + 1];
        }

        foreach (var (page, number) in pageNumbers)
        {
            var dictionary = (DictionaryToken)document.Structure.GetObject(page).Data;
            Expect(
                Name(dictionary, "Tabs") == "S",
                $"page {number} does not step through links in reading order"
            );
            var key = ((NumericToken)Get(dictionary, "StructParents")!).Int;
            var marks = ((ArrayToken)Resolved(parents[key])!).Data;
            Expect(
                marks.Count == owners.Keys.Count(owner => owner.Page == number),
                $"page {number}: the parent tree counts other marks than the page"
            );
            foreach (var annotation in References(dictionary, "Annots"))
            {
                var link = (DictionaryToken)document.Structure.GetObject(annotation).Data;
                var owner = parents[((NumericToken)Get(link, "StructParent")!).Int];
                Expect(
                    annotationOwners.TryGetValue(annotation, out var element)
                        && owner is IndirectReferenceToken { Data: var named }
                        && named.Equals(element),
                    $"page {number}: an annotation belongs to no element"
                );
                var inner = PageOf(link) > 0;
                InnerLinks += inner ? 1 : 0;
                Expect(
                    inner
                        || (
                            Dictionary(link, "A") is { } action
                            && Words(action, "URI") is { Length: > 0 }
                        ),
                    $"page {number}: a link leads nowhere"
                );
                Expect(
                    !string.IsNullOrWhiteSpace(Words(link, "Contents")),
                    $"page {number}: a link has no words"
                );
                Expect(
                    Get(link, "F") is NumericToken { Int: 4 },
                    $"page {number}: a link is not printed"
                );
            }
        }
    }

    static bool Shows(IGraphicsStateOperation operation) =>
        operation
            is ShowText
                or ShowTextsWithPositioning
                or StrokePath
                or FillPathNonZeroWinding
                or FillPathEvenOddRule
                or FillPathNonZeroWindingAndStroke
                or FillPathEvenOddRuleAndStroke;

    void Expect(bool holds, string fault)
    {
        if (!holds)
        {
            faults.Add(fault);
        }
    }

    IEnumerable<IToken> Kids(DictionaryToken element) =>
        Get(element, "K") switch
        {
            null => [],
            ArrayToken array => array.Data,
            IndirectReferenceToken reference
                when document.Structure.GetObject(reference.Data).Data is ArrayToken array =>
                array.Data,
            var single => [single],
        };

    IEnumerable<IndirectReference> References(DictionaryToken dictionary, string key) =>
        Get(dictionary, key) switch
        {
            ArrayToken array => array
                .Data.OfType<IndirectReferenceToken>()
                .Select(reference => reference.Data),
            IndirectReferenceToken reference
                when document.Structure.GetObject(reference.Data).Data is ArrayToken array => array
                .Data.OfType<IndirectReferenceToken>()
                .Select(one => one.Data),
            IndirectReferenceToken reference => [reference.Data],
            _ => [],
        };

    DictionaryToken? Dictionary(DictionaryToken dictionary, string key) =>
        Resolved(Get(dictionary, key)) as DictionaryToken;

    IToken? Resolved(IToken? token) =>
        token is IndirectReferenceToken reference
            ? document.Structure.GetObject(reference.Data).Data
            : token;

    string? Name(DictionaryToken dictionary, string key) =>
        (Resolved(Get(dictionary, key)) as NameToken)?.Data;

    string? Words(DictionaryToken dictionary, string key) =>
        Resolved(Get(dictionary, key)) switch
        {
            StringToken text => text.Data,
            HexToken text => text.Data,
            _ => null,
        };

    static IToken? Get(DictionaryToken dictionary, string key) =>
        dictionary.TryGet(NameToken.Create(key), out var token) ? token : null;
}
