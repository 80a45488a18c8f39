using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;
using Shouldly;

namespace PatternPress.Tests.Typesetting.Layout;

/// <summary>Paragraphs in the bundled font: 10 pt on lines of 14 pt, on pages of 200 × 140 pt (ten lines).</summary>
public class TextTests
{
    static readonly StyleSheet Styles = new(
        Points.Zero,
        new Dictionary<string, TextStyle>
        {
            ["body"] = new(),
            ["kept"] = new() { KeepTogether = true },
            ["head"] = new() { KeepWithNext = true },
            ["spaced"] = new() { SpaceBefore = 10.Pt, SpaceAfter = 4.Pt },
            ["justified"] = new() { Alignment = Alignment.Justified },
            ["balanced"] = new() { Balanced = true },
        }
    );

    static TypesetDocument Typeset(Block body, int width = 200) =>
        new Typesetter(TestFonts.Measurer).Typeset(
            new Document(
                new DocumentInformation("Texts", new DateOnly(2026, 1, 1)),
                Styles,
                [
                    new PageSequence(
                        new PageFrame(new PaperSize(width.Pt, 140.Pt), Insets.None),
                        body
                    ),
                ]
            )
        );

    static List<string> Lines(TypesetDocument document, int page = 0) =>
        document
            .Pages[page]
            .Items.OfType<PageItem.Text>()
            .GroupBy(text => text.Baseline)
            .Select(line =>
                string.Concat(line.OrderBy(text => text.X).Select(text => text.Characters))
                    .TrimEnd()
            )
            .ToList();

    static Text Words(int lines, string style = "body") =>
        new(
            [
                .. Enumerable
                    .Range(1, lines)
                    .SelectMany(i => (Inline[])[new Run($"line {i}"), new LineBreak()])
                    .SkipLast(1),
            ],
            style
        );

    [Test]
    public void Lines_end_between_words_and_are_even()
    {
        var lines = Lines(
            Typeset(
                new Text("one two three four five six seven eight nine ten eleven twelve thirteen")
            )
        );
        lines.Count.ShouldBe(2);
        string.Join(' ', lines)
            .ShouldBe("one two three four five six seven eight nine ten eleven twelve thirteen");
    }

    [Test]
    public void Measures_are_never_broken()
    {
        // At every width, number, fraction and unit stay on one line.
        for (var width = 60; width < 200; width += 3)
        {
            foreach (
                var line in Lines(
                    Typeset(
                        new Text("cut strips of 12 5/16 in and 7 1/2 in, or 40 in, then press"),
                        width
                    )
                )
            )
            {
                line.ShouldNotStartWith("in");
                line.ShouldNotEndWith("12");
                line.ShouldNotEndWith("40");
            }
        }
    }

    [Test]
    public void Two_lines_at_least_stay_at_the_foot()
    {
        var document = Typeset(new Stack(Words(9), Words(4)));
        Lines(document).Count.ShouldBe(9);
        Lines(document, 1).Count.ShouldBe(4);
    }

    [Test]
    public void Two_lines_at_least_go_to_the_next_page()
    {
        var document = Typeset(new Stack(Words(7), Words(4)));
        Lines(document).Count.ShouldBe(9);
        Lines(document, 1).ShouldBe(["line 3", "line 4"]);
    }

    [Test]
    public void Three_lines_stay_whole()
    {
        var document = Typeset(new Stack(Words(8), Words(3)));
        Lines(document).Count.ShouldBe(8);
        Lines(document, 1).Count.ShouldBe(3);
    }

    [Test]
    public void A_kept_paragraph_is_not_divided() =>
        Lines(Typeset(new Stack(Words(4), Words(8, "kept"))), 1).Count.ShouldBe(8);

    [Test]
    public void A_paragraph_longer_than_a_page_spares_the_next_a_lone_line()
    {
        var document = Typeset(Words(11));
        Lines(document).Count.ShouldBe(9);
        Lines(document, 1).Count.ShouldBe(2);
    }

    [Test]
    public void A_heading_goes_with_the_two_lines_that_follow()
    {
        var document = Typeset(new Stack(Words(8), Words(1, "head"), Words(4)));
        Lines(document).Count.ShouldBe(8);
        Lines(document, 1).Count.ShouldBe(5);
    }

    [Test]
    public void A_divided_paragraph_is_one_tag()
    {
        var tags = Typeset(Words(20))
            .Pages.Select(page => page.Items.OfType<PageItem.TagBegin>().Single().Tag)
            .ToList();
        tags.Count.ShouldBe(2);
        tags[0].ShouldBeSameAs(tags[1]);
        tags[0].Role.ShouldBe(TagRole.Paragraph);
    }

    [Test]
    public void Space_between_paragraphs_is_the_larger_of_both()
    {
        var baselines = Typeset(new Stack(Words(1, "spaced"), Words(1, "spaced")))
            .Pages[0]
            .Items.OfType<PageItem.Text>()
            .Select(text => text.Baseline)
            .ToList();
        (baselines[1] - baselines[0]).ShouldBe(24.Pt);
    }

    [Test]
    public void Capitals_stand_in_the_middle_of_a_line()
    {
        var text = Typeset(new Text("H")).Pages[0].Items.OfType<PageItem.Text>().Single();
        var ink = PageInspection.InkOf(text);
        (ink.Y - (14.Pt - ink.Bottom)).ShouldBeInRange((-0.01).Pt, 0.01.Pt);
    }

    [Test]
    public void Even_edges_are_even()
    {
        var text = new Text(
            string.Concat(Enumerable.Repeat("some words to fill several lines ", 6)).Trim(),
            "justified"
        );
        var ends = Typeset(text)
            .Pages[0]
            .Items.OfType<PageItem.Text>()
            .Select(line => line.X + line.Width)
            .SkipLast(1)
            .ToList();
        ends.Count.ShouldBeGreaterThan(3);
        ends.ShouldAllBe(end => end > new Points(199_900) && end <= new Points(200_000));
    }

    [Test]
    public void A_balanced_heading_has_lines_of_like_length()
    {
        var text = new Text("A heading that is just a little longer than one line", "balanced");
        var widths = Typeset(text)
            .Pages[0]
            .Items.OfType<PageItem.Text>()
            .Select(line => line.Width.Value)
            .ToList();
        widths.Count.ShouldBe(2);
        (widths.Max() - widths.Min()).ShouldBeLessThan(40);
    }

    [Test]
    public void A_soft_hyphen_shows_only_at_the_end_of_a_line()
    {
        Lines(Typeset(new Text("seam\u00ADallowance"), 200)).ShouldBe(["seamallowance"]);
        Lines(Typeset(new Text("seam\u00ADallowance"), 60)).ShouldBe(["seam-", "allowance"]);
    }

    [Test]
    public void A_word_wider_than_its_place_is_reported()
    {
        var problem = Typeset(new Text("Wonderfulness") { Origin = "here" }, 40).Problems.Single();
        problem.Kind.ShouldBe(LayoutProblemKind.TooWide);
        problem.Origin.ShouldBe("here");
        problem.Message.ShouldContain("'Wonderfulness'");
    }

    [Test]
    public void A_missing_letter_is_reported_once() =>
        Typeset(new Stack(new Text("漢 and 漢"), new Text("漢")))
            .Problems.Single()
            .ShouldSatisfyAllConditions(
                problem => problem.Kind.ShouldBe(LayoutProblemKind.MissingGlyph),
                problem => problem.Message.ShouldContain("U+6F22")
            );

    [Test]
    public void An_unknown_style_is_reported_and_replaced()
    {
        var document = Typeset(new Text("words", "nonsense"));
        document.Problems.Single().Kind.ShouldBe(LayoutProblemKind.UnknownStyle);
        Lines(document).ShouldBe(["words"]);
    }

    [Test]
    public void A_link_over_two_lines_is_one_link_with_two_places()
    {
        var link = new LinkTarget.ToWeb("https://example.org");
        var document = Typeset(
            new Text([
                new Run("see "),
                new Run("these words that go on over the end of the line") { Link = link },
            ]),
            120
        );
        var places = document.Pages[0].Items.OfType<PageItem.Link>().ToList();
        places.Count.ShouldBeGreaterThan(1);
        places.Select(place => place.Tag).Distinct().Count().ShouldBe(1);
        places.ShouldAllBe(place =>
            place.Words == "these words that go on over the end of the line"
        );
    }

    [Test]
    public void A_link_to_nowhere_is_reported() =>
        Typeset(new Text([new Run("x") { Link = new LinkTarget.ToAnchor("nowhere") }]))
            .Problems.Single()
            .Kind.ShouldBe(LayoutProblemKind.UnknownAnchor);

    [Test]
    public void Small_fractions_are_composed_and_read_as_numbers()
    {
        var items = Typeset(new Text("12 5/16 in")).Pages[0].Items;
        items.OfType<PageItem.SpanBegin>().Single().ActualText.ShouldBe("12 5/16");
        string.Concat(items.OfType<PageItem.Text>().Select(text => text.Characters))
            .ShouldBe("12 5⁄16 in");
    }

    [Test]
    public void Numerals_of_fractions_are_tall_enough_to_tell_apart()
    {
        foreach (var family in (string[])["Lato", "Vollkorn"])
        {
            var sheet = Styles.With("body", new TextStyle { Family = family });
            var document = new Typesetter(TestFonts.Measurer).Typeset(
                new Document(
                    new DocumentInformation("x", new DateOnly(2026, 1, 1)),
                    sheet,
                    [
                        new PageSequence(
                            new PageFrame(new PaperSize(200.Pt, 140.Pt), Insets.None),
                            new Text("5/32")
                        ),
                    ]
                )
            );
            var face = TestFonts.Library.Find(family, false, false);
            var shown = document.Pages[0].Items.OfType<PageItem.Text>().First();
            var numeral = face.Font.BoundsOf(shown.Shape.Glyphs[0].Id)!.Value;
            var height = (numeral.Top - numeral.Bottom) * shown.Size.Value / face.Font.UnitsPerEm;
            var capitals = face.Font.CapHeight * 10.0 / face.Font.UnitsPerEm;
            (height / capitals).ShouldBeGreaterThan(0.58, family);
        }
    }

    [Test]
    public void Numbers_of_a_column_line_up_where_the_whole_number_ends()
    {
        var table = new Table(
            [TableColumn.Share(1, CellAlignment.Number)],
            [
                .. ((string[])["7", "12 1/2", "3/8", "100.25", "4 1/4 yd"]).Select(
                    words => new TableRow(new TableCell(new Text(words)))
                ),
            ]
        );
        var ends = Typeset(table)
            .Pages[0]
            .Items.OfType<PageItem.Text>()
            .GroupBy(text => text.Baseline.Thousandths / 5000)
            .Select(row => row.OrderBy(text => text.X).First())
            .Select(text =>
            {
                var digits = text.Characters.TakeWhile(char.IsAsciiDigit).Count();
                digits = text.Size == 10.Pt ? digits : 0;
                return text.X.Value
                    + (
                        text.Shape.AdvanceOfFirst(digits)
                        * text.Size.Value
                        / text.Face.Font.UnitsPerEm
                    );
            })
            .ToList();
        ends.Count.ShouldBeGreaterThanOrEqualTo(5);
        (ends.Max() - ends.Min()).ShouldBeLessThan(0.01);
    }

    [Test]
    public void Numbers_may_line_up_at_the_left_of_their_column()
    {
        var table = new Table(
            [TableColumn.Share(1, CellAlignment.NumberLeft)],
            [
                .. ((string[])["7", "112 1/2", "3/8", "words"]).Select(words => new TableRow(
                    new TableCell(new Text(words))
                )),
            ]
        );
        var starts = Typeset(table)
            .Pages[0]
            .Items.OfType<PageItem.Text>()
            .GroupBy(text => text.Baseline.Thousandths / 5000)
            .Select(row => row.MinBy(text => text.X)!)
            .ToDictionary(text => text.Characters.Trim()[..1], text => text.X);
        // The widest number and the words stand at the edge; one digit stands two digits further in.
        starts["1"].ShouldBe(starts["w"]);
        starts["7"].ShouldBeGreaterThan(starts["1"]);
        starts["3"].ShouldBeGreaterThan(starts["7"]);
    }

    [Test]
    public void Contents_list_the_parts_of_a_section_in_running_lines_each_linked()
    {
        var document = Typeset(
            new Stack(
                new Contents { Depth = 1, MostParts = 2 },
                new PageBreak(),
                new Heading(1, "Units") { Style = "body" },
                new Heading(2, "Unit 1") { Style = "body" },
                new Heading(2, "Unit 2") { Style = "body" },
                new PageBreak(),
                // One part alone, or more than are asked for, are not listed.
                new Heading(1, "Blocks") { Style = "body" },
                new Heading(2, "Star") { Style = "body" },
                new Heading(1, "Cutting") { Style = "body" },
                new Heading(2, "A") { Style = "body" },
                new Heading(2, "B") { Style = "body" },
                new Heading(2, "C") { Style = "body" },
                new Text("end")
            )
        );
        document.Problems.ShouldBeEmpty();
        Lines(document).ShouldBe(["Units2", "Unit 1 2 · Unit 2 2", "Blocks3", "Cutting3"]);
        document
            .Pages[0]
            .Items.OfType<PageItem.Link>()
            .Select(link => (((LinkTarget.ToAnchorAt)link.Target).Index, link.Words))
            .ShouldBe([
                (0, "Units, 2"),
                (1, "Unit 1, 2"),
                (2, "Unit 2, 2"),
                (3, "Blocks, 3"),
                (5, "Cutting, 3"),
            ]);
    }

    [TestCase(1, "first, second", TestName = "A_short_first_item_goes_with_the_second")]
    [TestCase(3, "second", TestName = "A_long_first_item_may_stand_alone")]
    public void First_items_of_a_list(int lines, string second)
    {
        // Of the ten lines of a page the text above takes five; the second item needs five of its own.
        ListItem Item(string name, int count) =>
            new(
                new Text([
                    .. Enumerable
                        .Range(0, count)
                        .SelectMany(i =>
                            (Inline[])[new Run(i == 0 ? name : "more"), new LineBreak()]
                        )
                        .SkipLast(1),
                ])
            );
        var document = Typeset(
            new Stack(
                Words(5),
                new List(Item("first", lines), Item("second", 5), Item("third", 1))
                {
                    KeepItemsTogether = true,
                }
            )
        );
        string.Join(
                ", ",
                Lines(document, 1)
                    .Select(line => line.TrimStart('•', ' '))
                    .Where(line => line is "first" or "second")
            )
            .ShouldBe(second);
    }

    [Test]
    public void All_sixteenths_are_set_as_fractions_in_every_typeface()
    {
        // A rotary ruler is divided into eighths, some into sixteenths: common practice, no source.
        foreach (var family in (string[])["Lato", "Vollkorn", "Yrsa"])
        {
            var sheet = Styles.With("body", new TextStyle { Family = family });
            for (var n = 1; n < 16; n++)
            {
                foreach (var whole in (string[])["", "12 "])
                {
                    var document = new Typesetter(TestFonts.Measurer).Typeset(
                        new Document(
                            new DocumentInformation("x", new DateOnly(2026, 1, 1)),
                            sheet,
                            [
                                new PageSequence(
                                    new PageFrame(new PaperSize(200.Pt, 140.Pt), Insets.None),
                                    new Text($"{whole}{n}/16 in")
                                ),
                            ]
                        )
                    );
                    document.Problems.ShouldBeEmpty();
                    var items = document.Pages[0].Items;
                    items
                        .OfType<PageItem.SpanBegin>()
                        .Single()
                        .ActualText.ShouldBe($"{whole}{n}/16", family);
                    var shown = items.OfType<PageItem.Text>().ToList();
                    string.Concat(shown.Select(text => text.Characters))
                        .ShouldBe($"{whole}{n}\u204416 in", family);
                    // No numeral of the fraction is an ordinary one at full size.
                    var face = shown[^1].Face;
                    var ordinary = TestFonts
                        .Measurer.Shape(face, "0123456789")
                        .Glyphs.Select(glyph => glyph.Id)
                        .ToHashSet();
                    var slash = shown.FindIndex(text => text.Characters.Contains('\u2044'));
                    var below = shown[slash].Characters.EndsWith('\u2044')
                        ? shown[slash + 1]
                        : shown[slash];
                    (
                        below.Size < 10.Pt || !ordinary.Contains(below.Shape.Glyphs[^1].Id)
                    ).ShouldBeTrue($"{family} {n}/16");
                }
            }
        }
    }

    [Test]
    public void A_list_hangs_its_numbers_and_is_tagged()
    {
        var list = new List(
            new ListItem("first"),
            new ListItem(new Stack(new Text("second"), new Text("more")))
        )
        {
            Numbered = true,
        };
        var document = Typeset(list);
        document
            .Pages[0]
            .Items.OfType<PageItem.Text>()
            .Select(text => $"{text.X} {text.Characters}")
            .ShouldBe(["0 1.", "18 first", "0 2.", "18 second", "18 more"]);
        LayoutOf
            .Tags(document)
            .ShouldBe(
                "1: List1( ListItem2( Label3( ) ListBody4( Paragraph5( ) ) ) ListItem6( Label7( ) ListBody8( Paragraph9( ) Paragraph10( ) ) ) )"
            );
    }

    [Test]
    public void A_list_item_goes_on_without_its_number()
    {
        var document = Typeset(new List(new ListItem(Words(12))) { Numbered = true, Start = 5 });
        Lines(document)[0].ShouldStartWith("5.");
        Lines(document, 1).ShouldBe(["line 11", "line 12"]);
        document
            .Pages.SelectMany(page => page.Items.OfType<PageItem.TagBegin>())
            .Count(begin => begin.Tag.Role == TagRole.Label)
            .ShouldBe(1);
    }

    [Test]
    public void Page_numbers_are_settled()
    {
        var document = Typeset(
            new Stack(
                new Text([
                    new Run("see "),
                    PageField.PageOf("end"),
                    new Run(" of "),
                    PageField.PageCount,
                ]),
                new Contents(),
                new PageBreak(),
                new Heading(1, "Middle") { Style = "body" },
                new PageBreak(),
                new Heading(1, "The end") { Style = "body", Name = "end" },
                new Text([new Run("this is "), PageField.Page])
            )
        );
        document.Problems.ShouldBeEmpty();
        Lines(document).ShouldBe(["see 3 of 3", "Middle2", "The end3"]);
        Lines(document, 2).ShouldBe(["The end", "this is 3"]);
        document
            .Pages[0]
            .Items.OfType<PageItem.Link>()
            .Select(link => link.Target)
            .ShouldBe([new LinkTarget.ToAnchorAt(0), new LinkTarget.ToAnchorAt(1)]);
    }

    [Test]
    public void A_page_number_that_moves_its_own_target_is_reported_not_chased_for_ever()
    {
        // With "1" the words fit one page and push nothing; the longer "10" would push the anchor on, and so on.
        var document = Typeset(
            new Stack([
                .. Enumerable.Range(0, 9).Select(i => (Block)Words(10)),
                Words(9),
                new Text([PageField.PageOf("x"), new Run("0000000000 0000000000 0000")])
                {
                    Role = null,
                },
                new Anchor("x"),
                Words(1),
            ]),
            150
        );
        document.Problems.ShouldAllBe(problem =>
            problem.Kind == LayoutProblemKind.UnsettledPageNumbers
        );
    }
}
