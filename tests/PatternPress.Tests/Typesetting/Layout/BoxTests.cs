using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;
using Shouldly;

namespace PatternPress.Tests.Typesetting.Layout;

public class BoxTests
{
    static Box Boxed(Block content, int padding = 5) =>
        new(content) { Padding = Insets.All(padding.Pt) };

    [Test]
    public void Padding_stands_around_the_content() =>
        LayoutOf
            .Pages(new Stack(Boxed(new Wide("a", 20)), new Solid("b", 10, 10)))
            .ShouldBe("1: a 5 5 90x20 b 0 30 10x10");

    [Test]
    public void What_fits_exactly_stays() =>
        LayoutOf.Pages(Boxed(new Solid("a", 20, 130))).ShouldBe("1: a 5 5 20x130");

    [Test]
    public void The_padding_counts() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 10, 100), Boxed(new Solid("b", 20, 31))))
            .ShouldBe("1: a 0 0 10x100\n2: b 5 5 20x31");

    [Test]
    public void Divided_each_part_has_its_padding() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 10, 100), Boxed(new Flowing("b", 20, 40))))
            .ShouldBe("1: a 0 0 10x100 b 5 105 20x30\n2: b 5 5 20x10");

    [Test]
    public void Too_tall_content_is_reported_and_complete() =>
        LayoutOf
            .Pages(Boxed(new Solid("a", 20, 135)))
            .ShouldBe("1: a 5 5 20x135\nTooTall on page 1");

    [Test]
    public void A_tight_box_is_as_wide_as_its_content()
    {
        var page = LayoutOf
            .Typeset(Boxed(new Solid("a", 20, 10)) with { Tight = true, Background = Ink.Black })
            .Pages[0];
        page.Items.OfType<PageItem.Path>().Single().Outline.Bounds().ShouldBe((0, 0, 30, 20));
    }

    [Test]
    public void Background_and_border_are_an_artifact() =>
        LayoutOf
            .Tags(LayoutOf.Typeset(Boxed(new Solid("a", 20, 10)) with { Background = Ink.Black }))
            .ShouldBe("1: Artifact( ) a");

    [Test]
    public void Boxes_nest() =>
        LayoutOf.Pages(Boxed(Boxed(new Wide("a", 20)))).ShouldBe("1: a 10 10 80x20");

    [Test]
    public void Space_around_a_box_collapses_with_the_gap() =>
        LayoutOf
            .Pages(
                new Stack(
                    new Solid("a", 10, 10),
                    Boxed(new Wide("b", 10)) with
                    {
                        SpaceBefore = 20.Pt,
                        SpaceAfter = 3.Pt,
                    },
                    new Solid("c", 10, 10)
                )
                {
                    Gap = 8.Pt,
                }
            )
            .ShouldBe("1: a 0 0 10x10 b 5 35 90x10 c 0 58 10x10");
}
