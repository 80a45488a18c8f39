using PatternPress.Booklet.Words;
using PatternPress.Source;

namespace PatternPress.Tests.Booklet.Words;

public sealed class GlossaryTests
{
    private static readonly Glossary Sample = Glossary.Read(
        new SourceText(
            "glossary.md",
            "# Words\n\nbaste, basting\n: To hold layers together.\n\nbatting\n: What is between.\n\nquilt top\n: All that is sewn before batting is added.\n"
        )
    );

    [TestCase("Baste the layers.", "baste")]
    [TestCase("BASTING is next", "baste")]
    [TestCase("the battings", "batting")]
    [TestCase("the quilt top", "batting,quilt top")]
    [TestCase("combatting a bastet", "")]
    [TestCase("", "")]
    public void Finds_the_terms_a_text_uses_and_those_their_meanings_use(
        string text,
        string expected
    ) => string.Join(",", Sample.UsedIn(text).Select(t => t.Name)).ShouldBe(expected);

    [TestCase("Copy the coloring page.", false)]
    [TestCase("Copy the coloring page of each coloring.", true)]
    public void A_phrase_that_means_something_else_does_not_count(string text, bool used)
    {
        var glossary = Glossary.Read(
            new SourceText("glossary.md", "coloring, not coloring page\n: A choice of fabrics.\n")
        );
        glossary.Terms.Single().Names.ShouldBe(["coloring"]);
        glossary.UsedIn(text).Any().ShouldBe(used);
    }

    [Test]
    public void The_heading_is_kept() => Sample.Heading.ShouldBe("Words");

    [Test]
    public void Every_term_of_ours_is_explained_once_and_in_order()
    {
        var terms = BookletTemplates.Templates.Glossary.Terms;
        terms.Length.ShouldBeGreaterThan(30);
        terms
            .Select(t => t.Name)
            .ShouldBe(terms.Select(t => t.Name).Order(StringComparer.OrdinalIgnoreCase));
        terms.SelectMany(t => t.Names).ShouldBeUnique();
        terms.ShouldAllBe(t => t.Meaning.EndsWith('.'));
    }
}
