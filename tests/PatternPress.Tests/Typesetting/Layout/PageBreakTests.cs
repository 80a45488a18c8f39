using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;
using Shouldly;

namespace PatternPress.Tests.Typesetting.Layout;

public class PageBreakTests
{
    [Test]
    public void What_follows_starts_a_page() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 10), new PageBreak(), new Solid("b", 50, 10)))
            .ShouldBe("1: a 0 0 50x10\n2: b 0 0 50x10");

    [Test]
    public void At_the_top_nothing_happens() =>
        LayoutOf
            .Pages(new Stack(new PageBreak(), new Solid("b", 50, 10)))
            .ShouldBe("1: b 0 0 50x10");

    [Test]
    public void Two_in_a_row_make_no_empty_page() =>
        LayoutOf
            .Pages(
                new Stack(
                    new Solid("a", 50, 10),
                    new PageBreak(),
                    new PageBreak(),
                    new Solid("b", 50, 10)
                )
            )
            .ShouldBe("1: a 0 0 50x10\n2: b 0 0 50x10");

    [Test]
    public void At_the_end_it_makes_no_empty_page() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 10), new PageBreak()))
            .ShouldBe("1: a 0 0 50x10");

    [Test]
    public void After_a_full_page_it_makes_no_empty_page() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 140), new PageBreak(), new Solid("b", 50, 10)))
            .ShouldBe("1: a 0 0 50x140\n2: b 0 0 50x10");

    [Test]
    public void A_gap_is_dropped_at_the_top_and_at_the_foot() =>
        LayoutOf
            .Pages(
                new Stack(
                    new Gap(20.Pt),
                    new Solid("a", 50, 10),
                    new Gap(20.Pt),
                    new Solid("b", 50, 100),
                    new Gap(20.Pt),
                    new Solid("c", 50, 5)
                )
            )
            .ShouldBe("1: a 0 0 50x10 b 0 30 50x100 c 0 130 50x5");

    [Test]
    public void A_heading_between_two_breaks_has_its_page() =>
        LayoutOf
            .Pages(
                new Stack(
                    new Solid("a", 50, 10),
                    new PageBreak(),
                    new KeepWithNext(new Solid("h", 50, 10)),
                    new PageBreak(),
                    new Solid("b", 50, 10)
                )
            )
            .ShouldBe("1: a 0 0 50x10\n2: h 0 0 50x10\n3: b 0 0 50x10");

    [Test]
    public void A_gap_alone_begins_no_page() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 140), new PageBreak(), new Gap(10.Pt)))
            .ShouldBe("1: a 0 0 50x140");

    [Test]
    public void A_rule_takes_its_height_and_space()
    {
        var rule = new Rule(new Stroke(1.Pt, Ink.Black)) { SpaceBefore = 5.Pt };
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 130), rule, new Solid("b", 50, 4)))
            .ShouldBe("1: a 0 0 50x130 b 0 136 50x4");
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 130), rule, new Solid("b", 50, 5)))
            .ShouldBe("1: a 0 0 50x130\n2: b 0 0 50x5");
    }
}
