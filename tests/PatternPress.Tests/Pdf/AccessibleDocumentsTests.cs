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
public sealed class AccessibleDocumentsTests
{
    private static readonly Typesetter Typesetter = new(TestFonts.Library);

    private static IEnumerable<TestCaseData> Documents()
    {
        foreach (string id in Manuscripts.Own)
        {
            foreach (DocumentPlan plan in BookletTemplates.Templates.Documents)
            {
                foreach ((string name, PaperSize paper) in Papers.Of("both"))
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
        TypesetDocument typeset = Typesetter.Typeset(composer.Compose(chosen, paper).Document);
        PageInspection.Inspect(typeset).Select(finding => finding.ToString()).ShouldBeEmpty();
        byte[] bytes = PdfWriter.Write(typeset);
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
            $"{typeset.Pages.Length} pages, {bytes.Length:N0} bytes, {bytes.Length / typeset.Pages.Length:N0} a page; "
                + $"{tree.Elements.Count:N0} elements, {tree.Elements.Count(e => e.Type == "Figure")} figures, "
                + $"{tree.Steps.Count} steps with diagrams, {tree.InnerLinks} links, {tree.Bookmarks} bookmarks"
        );
    }
}
