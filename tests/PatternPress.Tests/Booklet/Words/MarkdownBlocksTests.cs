using System.Collections.Immutable;
using PatternPress.Booklet.Sections;
using PatternPress.Booklet.Words;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;

namespace PatternPress.Tests.Booklet.Words;

public sealed class MarkdownBlocksTests
{
    private static readonly MarkdownSetting Setting = new(
        BookletTemplates.Templates.Looks.ThemeFor([]),
        BookletTemplates.Labels
    );

    [Test]
    public void Headings_start_at_the_level_asked_for_and_are_named()
    {
        ImmutableArray<Block> blocks = Read(
            "# One\n\ntext\n\n## Two",
            Setting with
            {
                Anchor = "cut",
                FirstHeading = 2,
            }
        );
        blocks.OfType<Heading>().Select(h => h.Level).ShouldBe([2, 3]);
        blocks.OfType<Heading>().Select(h => h.Name).ShouldBe(["cut", "cut-2"]);
    }

    [Test]
    public void Emphasis_reaches_the_measures_inside_it()
    {
        var text = (Text)Read("Trim to **3 1/2 in** *square*.").Single();
        text.Content.OfType<Fraction>().Single().Style.Bold.ShouldBe(true);
        text.Content.OfType<Run>().Single(r => r.Text == "square").Style.Italic.ShouldBe(true);
    }

    [Test]
    public void Lists_keep_their_numbers()
    {
        List list = Read("3. three\n4. four").OfType<List>().Single();
        list.Numbered.ShouldBeTrue();
        list.Start.ShouldBe(3);
        list.Items.Length.ShouldBe(2);
    }

    [Test]
    public void A_quote_becomes_a_box_and_a_warning_has_its_word()
    {
        Read("> a remark").Single().ShouldBeOfType<KeepTogether>().Content.ShouldBeOfType<Box>();
        PlainText
            .Of(Read("> [!WARNING]\n> sharp"))
            .ShouldStartWith(BookletTemplates.Labels["alert-warning"]);
    }

    [Test]
    public void A_table_has_a_head_and_rows()
    {
        var table = (Table)Read("| a | b |\n|---|--:|\n| 1 | 2 |\n| 3 | 4 |").Single();
        table.Header.Length.ShouldBe(1);
        table.Rows.Length.ShouldBe(2);
        table.Columns[1].Alignment.ShouldBe(CellAlignment.Right);
    }

    [Test]
    public void Marks_of_print_replace_those_of_the_typewriter()
    {
        PlainText
            .Of(Read("\"It's\" 'so' -- he said... 5\" wide"))
            .ShouldBe("“It’s” ‘so’ – he said… 5″ wide\n");
    }

    [Test]
    public void Html_is_text()
    {
        PlainText.Of(Read("a <b>bold</b> word")).ShouldBe("a <b>bold</b> word\n");
        PlainText.Of(Read("<script>alert(1)</script>")).ShouldContain("<script>");
    }

    [Test]
    public void Web_links_lead_to_the_web_and_others_nowhere()
    {
        var text = (Text)Read("[a](https://example.org/x) <https://example.org>").Single();
        text.Content.Where(i => i.Link is LinkTarget.ToWeb).ShouldNotBeEmpty();
        ImmutableArray<Block> blocks = MarkdownBlocks.Read(
            "[a](javascript:alert(1)) [b](file:///etc/passwd)",
            Setting,
            out ImmutableArray<MarkdownFault> faults
        );
        ((Text)blocks.Single()).Content.ShouldAllBe(i => i.Link == null);
        faults
            .Select(f => f.Kind)
            .ShouldBe([MarkdownFaultKind.UnsafeLink, MarkdownFaultKind.UnsafeLink]);
    }

    [Test]
    public void Pictures_are_left_out_and_reported()
    {
        MarkdownBlocks.Read("see ![x](photo.jpg)", Setting, out var faults);
        faults.Single().ShouldBe(new MarkdownFault(MarkdownFaultKind.Picture, "photo.jpg"));
    }

    [Test]
    public void A_place_is_filled_with_blocks()
    {
        ImmutableArray<Block> blocks = Read(
            "before\n\n![t](place:t)\n\nafter",
            Setting with
            {
                Places = ImmutableDictionary<string, ImmutableArray<Block>>.Empty.Add(
                    "t",
                    [new PageBreak(), new PageBreak()]
                ),
            }
        );
        blocks.Length.ShouldBe(4);
        blocks[1].ShouldBeOfType<PageBreak>();
    }

    [Test]
    public void A_paragraph_goes_with_what_it_announces_but_not_with_a_heading_or_with_nothing()
    {
        Block Announcing(params ImmutableArray<Block> filled) =>
            Read(
                "before\n\n![e](place:e)\n\n![t](place:t)",
                Setting with
                {
                    Places = ImmutableDictionary<string, ImmutableArray<Block>>
                        .Empty.Add("e", [])
                        .Add("t", filled),
                }
            )[0];
        Announcing(new Text("row")).ShouldBeOfType<KeepWithNext>();
        Announcing().ShouldBeOfType<Text>();
        Announcing(new Heading(3, "Unit 1")).ShouldBeOfType<Text>();
        Announcing(
                new KeepTogether(
                    new Stack(new Anchor("a", 0, ""), new Heading(3, "Unit 1"), new Text("row"))
                )
            )
            .ShouldBeOfType<Text>();
    }

    [Test]
    public void Pages_and_sections_become_links_where_the_document_has_them()
    {
        MarkdownSetting setting = Setting with
        {
            Sections = ImmutableDictionary<string, string>.Empty.Add("cutting", "Cutting"),
            Present = ["cutting"],
        };
        var text = (Text)Read("see [x](section:cutting), page [x](page:cutting)", setting).Single();
        text.Content.OfType<Run>().ShouldContain(r => r.Text == "Cutting" && r.Link != null);
        text.Content.OfType<PageField>().Single().Anchor.ShouldBe("cutting");
    }

    public static IEnumerable<TestCaseData> HostileTexts()
    {
        yield return Hostile("quotes", new string('>', 5_000) + " x");
        yield return Hostile("lists", string.Concat(Enumerable.Repeat("- ", 5_000)) + "x");
        yield return Hostile("brackets", new string('[', 20_000));
        yield return Hostile("stars", new string('*', 20_000) + "a" + new string('*', 20_000));
        yield return Hostile("underscores", string.Concat(Enumerable.Repeat("_a ", 10_000)));
        yield return Hostile(
            "backticks",
            string.Concat(Enumerable.Range(1, 300).Select(i => new string('`', i) + " "))
        );
        yield return Hostile("links", string.Concat(Enumerable.Repeat("[a](", 8_000)));
        yield return Hostile(
            "pipes",
            string.Concat(Enumerable.Repeat("|a", 8_000))
                + "\n"
                + string.Concat(Enumerable.Repeat("|-", 8_000))
        );
        yield return Hostile(
            "references",
            string.Concat(Enumerable.Range(0, 2_000).Select(i => $"[{i}]: x\n"))
                + string.Concat(Enumerable.Range(0, 2_000).Select(i => $"[{i}]"))
        );

        static TestCaseData Hostile(string name, string text) =>
            new TestCaseData(text).SetArgDisplayNames(name);
    }

    [TestCaseSource(nameof(HostileTexts)), CancelAfter(20_000)]
    public void Hostile_texts_end(string text) =>
        MarkdownBlocks.Read(text, Setting, out _).IsDefault.ShouldBeFalse();

    private static ImmutableArray<Block> Read(string markdown, MarkdownSetting? setting = null)
    {
        ImmutableArray<Block> blocks = MarkdownBlocks.Read(
            markdown,
            setting ?? Setting,
            out ImmutableArray<MarkdownFault> faults
        );
        faults.ShouldBeEmpty();
        return blocks;
    }
}
