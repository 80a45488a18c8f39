using PatternPress.Booklet;
using PatternPress.Booklet.Sections;
using PatternPress.Booklet.Words;
using PatternPress.Typesetting;

namespace PatternPress.Tests.Booklet.Sections;

public sealed class DocumentComposerTests
{
    private static IEnumerable<string> Patterns => Manuscripts.Own;

    [TestCaseSource(nameof(Patterns))]
    public void Every_document_of_every_pattern_is_composed_without_a_finding(string id)
    {
        var composer = new DocumentComposer(Manuscripts.Of(id), BookletTemplates.Templates);
        foreach (DocumentPlan plan in composer.Plans)
        {
            ComposedDocument composed = composer.Compose(plan, PaperSize.Letter);
            composed
                .Diagnostics.Select(d => $"{d.Code} {d.Primary.Span} {d.Title}: {d.Text}")
                .ShouldBeEmpty();
            string text = TextOf(composed);
            TestContext.Out.WriteLine(text);
            text.ShouldNotContain(Labels.MissingMark);
        }
    }

    internal static string TextOf(ComposedDocument composed) =>
        PlainText.Of(composed.Document.Sequences.Select(s => s.Body));
}
