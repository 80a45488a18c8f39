using PatternPress.Booklet;
using PatternPress.Booklet.Sections;
using PatternPress.Booklet.Words;
using PatternPress.Pdf;
using PatternPress.Source.Syntax;
using PatternPress.Tests.Booklet.Sections;
using PatternPress.Tests.Typesetting;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;
using UglyToad.PdfPig;

namespace PatternPress.Tests.Booklet;

/// <summary>Editions of the booklet for other printers and readers.</summary>
public sealed class PrintEditionTests
{
    private static IEnumerable<string> Patterns => Manuscripts.Own;

    private static DocumentPlan Plan(string key) =>
        BookletTemplates.Templates.Documents.Single(plan => plan.Key == key);

    private static TypesetDocument Typeset(string id, string key) =>
        Typeset(Manuscripts.Of(id), key);

    private static TypesetDocument Typeset(Manuscript manuscript, string key)
    {
        DocumentPlan plan = Plan(key);
        ComposedDocument composed = new DocumentComposer(
            manuscript,
            BookletTemplates.Templates
        ).Compose(plan, plan.Printing.PageOf(PaperSize.Letter));
        TypesetDocument set = new Typesetter(TestFonts.Measurer).Typeset(composed.Document);
        set.Problems.Where(p => p.Kind != LayoutProblemKind.NearlyEmpty)
            .Select(p => $"page {p.Page}: {p.Message}")
            .ShouldBeEmpty();
        PageInspection
            .Inspect(set)
            .Select(finding => $"page {finding.Page}: {finding.Message}")
            .ShouldBeEmpty();
        return set;
    }

    [Test]
    public void A_build_makes_what_it_always_made_unless_asked_for_more() =>
        BookletTemplates
            .Templates.Documents.Where(plan => !plan.OnRequest)
            .Select(plan => plan.Key)
            .ShouldBe(["booklet", "requirements", "placement", "templates"]);

    [TestCaseSource(nameof(Patterns))]
    public void Without_colour_no_operator_of_any_page_sets_one(string id)
    {
        // ISO 32000-1, table 74: all operators that choose a colour space or a colour; g and G alone choose DeviceGray.
        string[] colour = ["rg", "RG", "k", "K", "cs", "CS", "sc", "SC", "scn", "SCN", "sh"];
        using var pdf = PdfDocument.Open(
            PdfWriter.Write(Typeset(id, "black"), new PdfOptions { Greyscale = true })
        );
        foreach (UglyToad.PdfPig.Content.Page page in pdf.GetPages())
        {
            string[] used = [.. page.Operations.Select(o => o.Operator).Distinct()];
            used.Intersect(colour).ShouldBeEmpty($"page {page.Number}");
            page.GetImages().ShouldAllBe(i => i.ColorSpaceDetails!.NumberOfColorComponents == 1);
        }
    }

    [TestCaseSource(nameof(Patterns))]
    public void Half_pages_are_laid_out_for_themselves_in_type_of_seven_points_or_more(string id)
    {
        TypesetDocument set = Typeset(id, "half-page");
        var half = new PaperSize(396.Pt, 612.Pt);
        set.Pages.ShouldAllBe(page => page.Paper == half);
        Texts(set).Min(text => text.Size).ShouldBeGreaterThanOrEqualTo(7.Pt * 64 / 100);
        // Numerals of fractions aside, nothing is smaller than 7 pt.
        Texts(set)
            .Where(text => text.Characters.Any(char.IsLetter))
            .Min(text => text.Size)
            .ShouldBeGreaterThanOrEqualTo(7.Pt);
        set.Pages.SelectMany(page => Strokes(page.Items))
            .Min(stroke => stroke.Width)
            .ShouldBeGreaterThanOrEqualTo(0.35.Pt);
    }

    [TestCaseSource(nameof(Patterns))]
    public void Large_print_is_set_in_eighteen_points(string id)
    {
        TypesetDocument set = Typeset(id, "large-print");
        var lengths = Texts(set)
            .GroupBy(text => text.Size)
            .ToDictionary(g => g.Key, g => g.Sum(text => text.Characters.Length));
        // More is set in this size than in any other; labels of figures are as much larger.
        lengths.MaxBy(l => l.Value).Key.ShouldBe(18.Pt);
        Texts(set)
            .Where(text => text.Characters.Any(char.IsLetter))
            .Min(text => text.Size)
            .ShouldBeGreaterThanOrEqualTo(7.Pt * 18 / 10);
    }

    // Three frames leave little room for the middle of the figure that shows their order.
    [TestCase("booklet")]
    [TestCase("large-print")]
    [TestCase("half-page")]
    [TestCase("black")]
    public void Numbers_of_three_borders_around_a_small_quilt_keep_apart(string key)
    {
        Manuscript frames = Manuscripts.Compile(
            "three-frames",
            """
            pattern:
              title: Three Frames
              edition: 1.0.0
              date: 2026-11-01
              designer: Tern & Tide Patterns
              copyright: © 2026 Tern & Tide Patterns
              skill: first quilt
            fabrics:
              A: {name: Deep Water, color: "#1f3a5f"}
              B: {name: Reed Bed, color: "#7fa37a"}
              C: {name: Pale Sky, color: "#dbe7ee"}
              D: {name: Brick, color: "#b5523b"}
              E: {name: Mill Linen, color: "#c9b99b"}
            blocks:
              rails:
                name: Rails
                size: 6
                parts: first middle last
                map: |
                  R
                units:
                  R: rail level, first middle last
            colorings:
              R1: rails first=A middle=B last=C
            quilt:
              setting: straight
              fill: |
                R1    R1/90
                R1/90 R1
              borders:
                - {width: 1, fabric: D, name: inner border}
                - {width: 1 1/2, fabric: E, name: middle border}
                - {width: 3, fabric: A, name: outer border}
              binding: D
              backing: E
            sizes:
              wall: {name: Wall, blocks: 3 x 3}
            """
        );
        // Typesetting it already asks that no words overlap.
        Typeset(frames, key).Pages.Length.ShouldBeGreaterThan(5);
    }

    [TestCase("a:\n  sections: [cover]\n  bleed: 3 mm", "")]
    [TestCase(
        "a:\n  sections: [cover]\nb:\n  like: a\n  pages: half\n  imposed: saddle-stitch",
        ""
    )]
    [TestCase("a:\n  sections: [cover]\n  imposed: saddle-stitch", "saddle-stitch")]
    [TestCase("a:\n  sections: [cover]\n  bleed: 3", "3")]
    [TestCase("a:\n  sections: [cover]\n  bleed: 30 mm", "30 mm")]
    [TestCase("a:\n  sections: [cover]\n  bleed: 1/0 in", "1/0 in")]
    [TestCase("a:\n  sections: [cover]\n  paper-thickness: thin", "thin")]
    [TestCase("a:\n  sections: [cover]\n  looks: baroque", "baroque")]
    [TestCase("a:\n  like: b\nb:\n  sections: [cover]", "b")]
    [TestCase("a:\n  suffix: x", "a")]
    public void What_cannot_be_printed_so_is_reported(string yaml, string blamed)
    {
        DocumentPlan.Read(
            SyntaxTree.Read("documents.yaml", yaml),
            ["half-page"],
            out var diagnostics
        );
        diagnostics.Length.ShouldBe(blamed.Length == 0 ? 0 : 1);
        if (blamed.Length > 0)
        {
            diagnostics[0].Title.ShouldContain($"\"{blamed}\"");
        }
    }

    [Test]
    public void A_document_like_another_takes_what_it_leaves_out()
    {
        DocumentPlan booklet = Plan("booklet"),
            stapled = Plan("stapled");
        stapled.Sections.ShouldBe(booklet.Sections);
        stapled.Covered.ShouldBeTrue();
        stapled.Printing.SaddleStitched.ShouldBeTrue();
        stapled.Printing.PaperThickness.ShouldBe(0.1.Mm);
    }

    private static IEnumerable<PageItem.Text> Texts(TypesetDocument set) =>
        set.Pages.SelectMany(page => All(page.Items)).OfType<PageItem.Text>();

    private static IEnumerable<Stroke> Strokes(IEnumerable<PageItem> items) =>
        All(items).OfType<PageItem.Path>().Select(path => path.Stroke).OfType<Stroke>();

    private static IEnumerable<PageItem> All(IEnumerable<PageItem> items) =>
        items.SelectMany(item => item is PageItem.Clip clip ? All(clip.Items) : [item]);
}
