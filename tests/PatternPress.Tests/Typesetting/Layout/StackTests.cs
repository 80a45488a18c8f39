using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;
using Shouldly;

namespace PatternPress.Tests.Typesetting.Layout;

public class StackTests
{
    [Test]
    public void Items_stand_below_one_another() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 30), new Solid("b", 60, 40)))
            .ShouldBe("1: a 0 0 50x30 b 0 30 60x40");

    [Test]
    public void A_gap_stands_between_items_only() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 30), new Solid("b", 60, 40)) { Gap = 10.Pt })
            .ShouldBe("1: a 0 0 50x30 b 0 40 60x40");

    [Test]
    public void What_fits_exactly_stays() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 100), new Solid("b", 60, 40)))
            .ShouldBe("1: a 0 0 50x100 b 0 100 60x40");

    [Test]
    public void One_point_too_much_moves_to_the_next_page() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 101), new Solid("b", 60, 40)))
            .ShouldBe("1: a 0 0 50x101\n2: b 0 0 60x40");

    [Test]
    public void The_gap_counts_when_it_is_tight_and_is_dropped_at_the_top() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 100), new Solid("b", 60, 40)) { Gap = 1.Pt })
            .ShouldBe("1: a 0 0 50x100\n2: b 0 0 60x40");

    [Test]
    public void What_flows_is_divided_and_goes_on() =>
        LayoutOf
            .Pages(
                new Stack(new Solid("a", 50, 100), new Flowing("b", 60, 60), new Solid("c", 10, 10))
                {
                    Gap = 5.Pt,
                }
            )
            .ShouldBe("1: a 0 0 50x100 b 0 105 60x35\n2: b 0 0 60x25 c 0 30 10x10");

    [Test]
    public void What_flows_may_take_several_pages() =>
        LayoutOf
            .Pages(new Stack(new Flowing("a", 50, 300)))
            .ShouldBe("1: a 0 0 50x140\n2: a 0 0 50x140\n3: a 0 0 50x20");

    [Test]
    public void What_has_no_height_takes_no_gap() =>
        LayoutOf
            .Pages(
                new Stack(new Solid("a", 50, 30), new Solid("z", 0, 0), new Solid("b", 60, 40))
                {
                    Gap = 10.Pt,
                }
            )
            .ShouldBe("1: a 0 0 50x30 z 0 40 0x0 b 0 40 60x40");

    [Test]
    public void Stacks_within_keep_their_own_gaps_over_a_page_break() =>
        LayoutOf
            .Pages(
                new Stack(
                    new Solid("a", 10, 60),
                    new Stack(
                        new Solid("b", 10, 50),
                        new Solid("c", 10, 50),
                        new Solid("d", 10, 20)
                    )
                    {
                        Gap = 3.Pt,
                    },
                    new Solid("e", 10, 10)
                )
                {
                    Gap = 10.Pt,
                }
            )
            .ShouldBe("1: a 0 0 10x60 b 0 70 10x50\n2: c 0 0 10x50 d 0 53 10x20 e 0 83 10x10");

    [Test]
    public void A_rhythm_starts_every_item_at_a_multiple() =>
        LayoutOf
            .Pages(
                new Stack(new Solid("a", 10, 13), new Solid("b", 10, 20), new Solid("c", 10, 1))
                {
                    Rhythm = 10.Pt,
                }
            )
            .ShouldBe("1: a 0 0 10x13 b 0 20 10x20 c 0 40 10x1");

    [Test]
    public void What_is_taller_than_a_page_is_placed_and_reported_with_its_origin() =>
        LayoutOf
            .Pages(
                new Stack(
                    new Solid("a", 50, 30),
                    new Solid("b", 60, 141) { Origin = "line 7" },
                    new Solid("c", 10, 10)
                )
            )
            .ShouldBe(
                "1: a 0 0 50x30\n2: b 0 0 60x141\n3: c 0 0 10x10\nTooTall on page 2 at line 7"
            );

    [Test]
    public void An_empty_stack_is_an_empty_page() => LayoutOf.Pages(new Stack()).ShouldBe("1:");
}
