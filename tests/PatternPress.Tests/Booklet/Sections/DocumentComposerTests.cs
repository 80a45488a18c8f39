using PatternPress.Booklet;
using PatternPress.Booklet.Sections;
using PatternPress.Booklet.Words;
using PatternPress.Tests.Typesetting;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;

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
            string text = Documents.TextOf(composed);
            text.ShouldNotContain(Labels.MissingMark);
            text.ShouldNotContain("{{");
            text.ShouldNotContain("place:");
        }
    }

    [Test]
    public void Documents_composed_side_by_side_are_the_same()
    {
        var composer = new DocumentComposer(
            Manuscripts.Of("harbor-lights"),
            BookletTemplates.Templates
        );
        string[] one = [.. composer.Plans.Select(Text)];
        string[] other = [.. composer.Plans.AsParallel().AsOrdered().Select(Text)];
        other.ShouldBe(one);

        string Text(DocumentPlan plan) => Documents.TextOf(composer.Compose(plan, PaperSize.A4));
    }

    [TestCaseSource(nameof(Patterns))]
    public void Every_link_leads_somewhere_and_every_figure_has_words(string id)
    {
        ComposedDocument composed = Documents.Compose(Manuscripts.Of(id));
        List<Block> all = [.. composed.Document.Sequences.SelectMany(s => Documents.AllOf(s.Body))];
        HashSet<string> anchors =
        [
            .. all.OfType<Heading>().Select(h => h.Name ?? ""),
            .. all.OfType<Anchor>().Select(a => a.Name),
        ];
        foreach (Inline inline in all.OfType<Text>().SelectMany(t => t.Content))
        {
            if (inline.Link is LinkTarget.ToAnchor { Name: var name })
            {
                anchors.ShouldContain(name);
            }
            if (inline is PageField { Anchor: { } anchor })
            {
                anchors.ShouldContain(anchor);
            }
        }
        all.OfType<Figure>().ShouldAllBe(f => f.Alt.EndsWith('.'));
        all.OfType<Figure>().ShouldNotBeEmpty();
        all.OfType<Heading>().Where(h => h.Name is not null).Select(h => h.Name).ShouldBeUnique();
    }

    [TestCaseSource(nameof(Patterns))]
    public void No_page_is_nearly_empty_and_everything_has_room(string id)
    {
        var composer = new DocumentComposer(Manuscripts.Of(id), BookletTemplates.Templates);
        foreach (DocumentPlan plan in composer.Plans.Where(plan => !plan.OnRequest))
        {
            foreach (PaperSize paper in new[] { PaperSize.Letter, PaperSize.A4 })
            {
                new Typesetter(TestFonts.Library)
                    .Typeset(composer.Compose(plan, paper).Document)
                    .Problems.Select(p => $"{plan.Key}, page {p.Page}: {p.Kind}, {p.Message}")
                    .ShouldBeEmpty();
            }
        }
    }

    // Figures that show one size say which, or hold for all: no other size's maker cuts by its numbers.
    [TestCaseSource(nameof(Patterns))]
    public void Figures_of_one_size_are_named_or_carry_no_numbers(string id)
    {
        Manuscript manuscript = Manuscripts.Of(id);
        List<Figure> all =
        [
            .. Documents
                .Compose(manuscript)
                .Document.Sequences.SelectMany(s => Documents.AllOf(s.Body))
                .OfType<Figure>(),
        ];
        foreach (Figure figure in all.Where(f => f.Alt.StartsWith("The backing of")))
        {
            string size = PlainText.Of([figure.Caption.ShouldNotBeNull()]).Trim();
            figure.Alt.ShouldStartWith($"The backing of the {size.ToLowerInvariant()} quilt");
        }
        foreach (
            Figure figure in all.Where(f =>
                f.Alt.StartsWith("The borders of") || f.Alt.StartsWith("The three layers of")
            )
        )
        {
            PlainText
                .Of([figure.Caption.ShouldNotBeNull()])
                .ShouldContain(
                    manuscript.Tables.Sizes[(manuscript.Tables.Sizes.Length - 1) / 2].Name
                );
        }
        all.Count(f => f.Alt.StartsWith("The backing of"))
            .ShouldBe(manuscript.Tables.Backing.Count(b => b is { Panels: > 1 }));
    }

    [TestCaseSource(nameof(Patterns))]
    public void Headings_never_skip_a_level(string id)
    {
        foreach (string plan in new[] { "booklet", "requirements", "placement" })
        {
            int last = 0;
            foreach (
                Heading heading in Documents
                    .Compose(Manuscripts.Of(id), plan)
                    .Document.Sequences.SelectMany(s => Documents.AllOf(s.Body))
                    .OfType<Heading>()
            )
            {
                heading.Level.ShouldBeLessThanOrEqualTo(last + 1, PlainText.Of(heading.Content));
                last = heading.Level;
            }
        }
    }

    [Test]
    public void A_quilt_with_nothing_but_blocks_leaves_out_what_it_does_not_have()
    {
        ComposedDocument composed = Documents.Compose(Manuscripts.Compile("bare", Bare));
        composed.Diagnostics.ShouldBeEmpty();
        string text = Documents.TextOf(composed);
        text.ShouldNotContain("## Borders");
        text.ShouldNotContain("cornerstone");
        text.ShouldNotContain("### Bind");
        text.ShouldNotContain("Not for a sleeping baby");
        text.ShouldNotContain("Follow only the column");
        text.ShouldContain("## Cutting");
    }

    [Test]
    public void A_designers_notes_stand_at_their_places()
    {
        Manuscript manuscript = Manuscripts.Compile(
            "noted",
            Bare.Replace(
                "  about: Plain.\n",
                """
                  about: Plain *and* simple.
                  notes:
                    cutting: Note for cutting, {{ yards "A" "throw" }} of A.
                    cutting-end: Note at the end.
                    unit-1: Note for unit one.
                    block-pair: Note for the block.
                    size-throw: Note for the throw.

                """
            )
        );
        string text = Documents.TextOf(Documents.Compose(manuscript));
        string yards = PlainText
            .Of([
                new Text(
                    new NumberWords(manuscript.Tables.Unit, BookletTemplates.Labels).Yards(
                        manuscript.Tables.Requirements.Fabrics[0].BySize[0]!.Yardage
                    )
                ),
            ])
            .Trim();
        text.ShouldContain(
            $"## Cutting\n{BookletTemplates.Labels["designers-note"]}\nNote for cutting, {yards} of A.\n"
        );
        int end = text.IndexOf("Note at the end.", StringComparison.Ordinal);
        end.ShouldBeInRange(
            text.IndexOf("## Cutting", StringComparison.Ordinal),
            text.IndexOf("## Units", StringComparison.Ordinal)
        );
        text.ShouldContain("Note for unit one.");
        text.ShouldContain("Note for the block.");
        text.ShouldContain("Note for the throw.");
    }

    [Test]
    public void Names_full_of_Markdown_are_printed_as_they_are()
    {
        Manuscript manuscript = Manuscripts.Compile(
            "odd",
            Bare.Replace("title: Bare", "title: \"*Stars* & [Bars](x) <b>#1</b>\"")
                .Replace("name: Ink", "name: \"_Ink_ | `dark`\"")
                .Replace("designer: Nobody", "designer: \"{{ 1 }} ![x](y)\"")
        );
        foreach (string plan in new[] { "booklet", "requirements", "placement" })
        {
            ComposedDocument composed = Documents.Compose(manuscript, plan);
            composed.Diagnostics.ShouldBeEmpty();
            string text = Documents.TextOf(composed);
            text.ShouldContain("*Stars* & [Bars](x) <b>#1</b>");
            text.ShouldContain("{{ 1 }} ![x](y)");
        }
        Documents.TextOf(Documents.Compose(manuscript)).ShouldContain("_Ink_ | `dark`");
    }

    [Test]
    public void More_sizes_than_fit_side_by_side_make_several_tables()
    {
        string sizes = string.Concat(
            Enumerable.Range(3, 8).Select(i => $"  s{i}: {{name: Size {i}, blocks: {i} x {i}}}\n")
        );
        ComposedDocument composed = Documents.Compose(
            Manuscripts.Compile(
                "many",
                Bare.Replace("  throw: {name: Throw, blocks: 4 x 5}\n", sizes)
            )
        );
        composed.Diagnostics.ShouldBeEmpty();
        List<Table> tables =
        [
            .. Documents
                .TablesOf(composed)
                .Where(t => t.Summary == BookletTemplates.Labels["summary-requirements"]),
        ];
        tables.Count.ShouldBe(2);
        tables.Sum(t => t.Columns.Length - 3).ShouldBe(8);
    }

    [Test]
    public void A_metric_house_prints_centimetres()
    {
        Manuscript manuscript = Manuscripts.Compile(
            "metric",
            Bare.Replace(
                    "fabrics:\n",
                    """
                    house: {unit: centimetre, seam: 0.75 cm, usable-width: 100 cm, ruler: 0.5 cm, yard-step: 10 cm, squaring: 5 cm, backing-overhang: 10 cm, backing-width: 100 cm, batting-overhang: 10 cm, binding-width: 6 cm, binding-extra: 30 cm}
                    fabrics:

                    """
                )
                .Replace("size: 6", "size: 16 cm")
        );
        ComposedDocument composed = Documents.Compose(manuscript);
        composed.Diagnostics.ShouldBeEmpty();
        string text = Documents.TextOf(composed);
        text.ShouldContain("0.75 cm");
        text.ShouldContain(" m |");
        System
            .Text.RegularExpressions.Regex.Matches(text, @"[0-9] in\b|[0-9] yd\b")
            .ShouldBeEmpty();
    }

    private const string Bare = """
        pattern:
          title: Bare
          edition: 1.0.0
          date: 2026-01-02
          designer: Nobody
          skill: anyone
          about: Plain.
        fabrics:
          A: {name: Ink, color: "#15233b"}
          B: {name: Cream, color: "#f6ead2"}
        blocks:
          pair:
            name: Pair
            size: 6
            parts: one two
            map: |
              H
            units:
              H: half-square upper-left, one on two
        colorings:
          P: pair one=A two=B
        quilt:
          setting: straight
          fill: |
            P
        sizes:
          throw: {name: Throw, blocks: 4 x 5}

        """;
}
