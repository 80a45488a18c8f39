using System.Collections.Immutable;
using PatternPress.Booklet.Words;

namespace PatternPress.Tests.Booklet.Sections;

public sealed class GlossaryPageTests
{
    private static IEnumerable<string> Patterns => Manuscripts.Own;

    /// <summary>Words of the trade that a first-time maker does not know (common practice, no source).</summary>
    private static readonly string[] Trade =
    [
        "backing",
        "baste",
        "batting",
        "bias",
        "binding",
        "block",
        "border",
        "check size",
        "coloring",
        "cornerstone",
        "design wall",
        "fat quarter",
        "finished size",
        "flying geese",
        "four-patch",
        "grain",
        "half-square triangle",
        "in the ditch",
        "miter",
        "nine-patch",
        "panel",
        "patch",
        "quarter-square triangle",
        "quilt top",
        "raw edge",
        "right sides together",
        "sashing",
        "seam allowance",
        "segment",
        "selvage",
        "square-in-a-square",
        "strip set",
        "unit",
        "usable width",
        "width of fabric",
    ];

    [TestCaseSource(nameof(Patterns))]
    public void No_term_of_the_trade_is_used_without_being_explained(string id)
    {
        string text = Documents.TextOf(Documents.Compose(Manuscripts.Of(id)));
        int start = text.IndexOf(
            $"## {BookletTemplates.Templates.Glossary.Heading}",
            StringComparison.Ordinal
        );
        string before = text[..start];
        // A fabric that is called Grain says nothing about grain.
        foreach (string name in Manuscripts.Of(id).Tables.Fabrics.Select(f => f.Name))
        {
            before = before.Replace(name, "", StringComparison.Ordinal);
        }
        ImmutableArray<GlossaryTerm> terms = BookletTemplates.Templates.Glossary.Terms;
        string[] explained = [.. text[start..].Split('\n').Select(l => l.Split(':')[0].Trim())];
        foreach (string term in Trade)
        {
            if (terms.Single(t => t.Name == term).OccursIn(before))
            {
                explained.ShouldContain(term);
            }
        }
    }

    [TestCaseSource(nameof(Patterns))]
    public void Only_terms_that_are_used_are_explained(string id)
    {
        string text = Documents.TextOf(Documents.Compose(Manuscripts.Of(id)));
        text.Contains("\nfat quarter: ").ShouldBe(id == "lantern-fair");
        text.Contains("\nsegment: ").ShouldBe(id == "towpath");
        text.Contains("\ncornerstone: ").ShouldBe(id is "harbor-lights" or "lantern-fair");
        // Neither in explanations of other terms nor in words that mean something else.
        text.Contains("\nsashing: ").ShouldBe(id is "harbor-lights" or "lantern-fair");
        text.Contains("\nrounds: ").ShouldBe(id == "rose-of-the-winds");
        if (id == "signal-fires")
        {
            // Five of its fabrics are called Grain.
            text.Contains("\ngrain: ").ShouldBeFalse();
        }
    }
}
