using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;
using Shouldly;

namespace PatternPress.Tests.Typesetting.Layout;

public class FigureTests
{
    static string Bounds(Block body, int page = 0)
    {
        var path = LayoutOf
            .Typeset(body)
            .Pages[page]
            .Items.OfType<PageItem.Path>()
            .Single()
            .Outline.Bounds();
        return $"{path.Left} {path.Top} {path.Right - path.Left}x{path.Bottom - path.Top}";
    }

    [Test]
    public void Has_its_natural_width() =>
        Bounds(new Figure(LayoutOf.Drawing(60, 30), "square")).ShouldBe("0 0 60x30");

    [Test]
    public void Is_never_wider_than_its_place() =>
        Bounds(new Figure(LayoutOf.Drawing(200, 100), "square")).ShouldBe("0 0 100x50");

    [Test]
    public void A_greatest_width_may_be_more_than_the_natural_one() =>
        Bounds(new Figure(LayoutOf.Drawing(20, 10), "square") { MaxWidth = 80.Pt })
            .ShouldBe("0 0 80x40");

    [Test]
    public void Stands_in_the_middle_or_at_the_right()
    {
        Bounds(
                new Figure(LayoutOf.Drawing(60, 30), "x")
                {
                    Alignment = PatternPress.Typesetting.Styles.Alignment.Centre,
                }
            )
            .ShouldBe("20 0 60x30");
        Bounds(
                new Figure(LayoutOf.Drawing(60, 30), "x")
                {
                    Alignment = PatternPress.Typesetting.Styles.Alignment.Right,
                }
            )
            .ShouldBe("40 0 60x30");
    }

    [Test]
    public void Shrinks_before_it_moves() =>
        Bounds(
                new Stack(
                    new Solid("a", 10, 100),
                    new Figure(LayoutOf.Drawing(100, 50), "x") { MinWidth = 70.Pt }
                )
            )
            .ShouldBe("0 100 80x40");

    [Test]
    public void Moves_where_it_would_be_too_small() =>
        Bounds(
                new Stack(
                    new Solid("a", 10, 100),
                    new Figure(LayoutOf.Drawing(100, 50), "x") { MinWidth = 90.Pt }
                ),
                1
            )
            .ShouldBe("0 0 100x50");

    [Test]
    public void Moves_where_it_may_not_shrink() =>
        Bounds(new Stack(new Solid("a", 10, 100), new Figure(LayoutOf.Drawing(100, 50), "x")), 1)
            .ShouldBe("0 0 100x50");

    [Test]
    public void The_caption_stands_below_and_stays() =>
        LayoutOf
            .Pages(
                new Stack(
                    new Solid("a", 10, 70),
                    new Figure(LayoutOf.Drawing(50, 50), "x")
                    {
                        Caption = new Solid("c", 40, 20),
                        CaptionGap = 5.Pt,
                    }
                )
            )
            .ShouldBe("1: a 0 0 10x70\n2: figure 0 0 50x50 c 0 55 40x20");

    [Test]
    public void Taller_than_a_page_it_is_shrunk_and_reported()
    {
        var body = new Figure(LayoutOf.Drawing(50, 280), "x") { Origin = "line 3" };
        LayoutOf.Pages(body).ShouldBe("1: figure 0 0 25x140\nTooTall on page 1 at line 3");
    }

    [Test]
    public void Has_a_tag_with_its_words_or_is_an_artifact()
    {
        LayoutOf
            .Tags(LayoutOf.Typeset(new Figure(LayoutOf.Drawing(50, 20), "x")))
            .ShouldBe("1: Figure1( figure )");
        LayoutOf
            .Tags(LayoutOf.Typeset(new Figure(LayoutOf.Drawing(50, 20), "")))
            .ShouldBe("1: Artifact( figure )");
    }
}
