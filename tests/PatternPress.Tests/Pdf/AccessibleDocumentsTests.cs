using System.Text;
using PatternPress.Booklet;
using PatternPress.Booklet.Words;
using PatternPress.Cli.Commands;
using PatternPress.Pdf;
using PatternPress.Tests.Booklet;
using PatternPress.Tests.Booklet.Sections;
using PatternPress.Tests.Typesetting;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Tests.Pdf;

/// <summary>
/// Every document of every pattern on every paper: sound tags, and no words that collide or leave their place. A file
/// may claim PDF/UA-1 only while these hold.
/// </summary>
[Parallelizable(ParallelScope.Children)]
public sealed class AccessibleDocumentsTests
{
    private static readonly Typesetter Typesetter = new(TestFonts.Library);

    private static IEnumerable<TestCaseData> Documents()
    {
        foreach (string id in Manuscripts.Own)
        {
            foreach (DocumentPlan plan in BookletTemplates.Templates.Documents)
            {
                // What is made on request differs from paper to paper as the rest does: one pattern shows it.
                string papers = plan.OnRequest && id != "harbor-lights" ? "letter" : "both";
                foreach ((string name, PaperSize paper) in Papers.Of(papers))
                {
                    yield return new TestCaseData(id, plan.Key, paper).SetArgDisplayNames(
                        id,
                        plan.Key,
                        name
                    );
                }
            }
        }
    }

    [TestCaseSource(nameof(Documents))]
    public void Tags_are_sound_and_words_keep_apart(string id, string plan, PaperSize paper)
    {
        Manuscript manuscript = Manuscripts.Of(id);
        var composer = new DocumentComposer(manuscript, BookletTemplates.Templates);
        DocumentPlan chosen = composer.Plans.Single(p => p.Key == plan);
        Printing printing = chosen.Printing;
        TypesetDocument typeset = Typesetter.Typeset(
            composer.Compose(chosen, printing.PageOf(paper)).Document
        );
        PageInspection.Inspect(typeset).Select(finding => finding.ToString()).ShouldBeEmpty();
        var options = new PdfOptions { Greyscale = printing.BlackOnly };
        byte[]? sheets = PrintSheets.Write(typeset, printing, paper, options);
        if (printing.SaddleStitched)
        {
            // Read in the order of printing it makes no sense, and it says so.
            Encoding.Latin1.GetString(sheets!).ShouldNotContain("pdfuaid:part");
            return;
        }
        byte[] bytes = sheets ?? PdfWriter.Write(typeset, options);
        TagTree tree = TagTree.Check(bytes);
        tree.Faults.ShouldBeEmpty();
        tree.ClaimsAccessibility.ShouldBeTrue();
        tree.Bookmarks.ShouldBe(typeset.Anchors.Count(anchor => anchor.Level > 0));
        tree.TablesWithoutHeaders.ShouldBe(0);
        tree.ContentsEntries.ShouldAllBe(linked => linked);
        tree.Steps.Where(step => !step.Linked).Select(step => step.Diagram).ShouldBeEmpty();
        if (plan == "booklet")
        {
            tree.ContentsEntries.Count.ShouldBeGreaterThan(5);
            tree.Steps.Count.ShouldBeGreaterThan(3);
        }
        // What is read aloud begins with a heading of the first level.
        tree.Elements.First(e => e.Type[0] == 'H').Type.ShouldBe("H1");
        TestContext.Out.WriteLine(
            $"{id} {plan}: {typeset.Pages.Length} pages, {bytes.Length:N0} bytes, {bytes.Length / typeset.Pages.Length:N0} a page; "
                + $"{tree.Elements.Count:N0} elements, {tree.Elements.Count(e => e.Type == "Figure")} figures, "
                + $"{tree.Steps.Count} steps with diagrams, {tree.InnerLinks} links, {tree.Bookmarks} bookmarks"
        );
    }
}
