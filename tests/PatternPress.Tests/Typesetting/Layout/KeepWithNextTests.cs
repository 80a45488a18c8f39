using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;
using Shouldly;

namespace PatternPress.Tests.Typesetting.Layout;

public class KeepWithNextTests
{
    static KeepWithNext Head(string name, int height = 20) => new(new Solid(name, 50, height));

    [Test]
    public void Stays_where_the_next_fits() =>
        LayoutOf
            .Pages(new Stack(Head("h"), new Solid("a", 50, 120)))
            .ShouldBe("1: h 0 0 50x20 a 0 20 50x120");

    [Test]
    public void Moves_along_when_the_next_moves() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 90), Head("h"), new Solid("b", 50, 40)))
            .ShouldBe("1: a 0 0 50x90\n2: h 0 0 50x20 b 0 20 50x40");

    [Test]
    public void A_next_that_begins_here_is_enough() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 90), Head("h"), new Flowing("b", 50, 40)))
            .ShouldBe("1: a 0 0 50x90 h 0 90 50x20 b 0 110 50x30\n2: b 0 0 50x10");

    [Test]
    public void Several_in_a_row_move_together() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 80), Head("h"), Head("i"), new Solid("b", 50, 40)))
            .ShouldBe("1: a 0 0 50x80\n2: h 0 0 50x20 i 0 20 50x20 b 0 40 50x40");

    [Test]
    public void At_the_top_it_does_not_move_again() =>
        LayoutOf
            .Pages(new Stack(Head("h", 30), new Solid("a", 50, 120)))
            .ShouldBe("1: h 0 0 50x30\n2: a 0 0 50x120");

    [Test]
    public void A_last_one_stays() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 120), Head("h")))
            .ShouldBe("1: a 0 0 50x120 h 0 120 50x20");

    [Test]
    public void The_last_of_an_inner_stack_stays_with_what_follows_the_stack() =>
        LayoutOf
            .Pages(new Stack(new Stack(new Solid("a", 50, 90), Head("h")), new Solid("b", 50, 40)))
            .ShouldBe("1: a 0 0 50x90\n2: h 0 0 50x20 b 0 20 50x40");

    [Test]
    public void Through_a_box_it_moves_as_a_whole() =>
        LayoutOf
            .Pages(
                new Stack(
                    new Solid("a", 50, 90),
                    Head("h"),
                    new Box(new Solid("b", 50, 30)) { Padding = Insets.All(1.Pt) }
                )
            )
            .ShouldBe("1: a 0 0 50x90\n2: h 0 0 50x20 b 1 21 50x30");

    [Test]
    public void It_stays_with_a_kept_next() =>
        LayoutOf
            .Pages(
                new Stack(
                    new Solid("a", 50, 90),
                    Head("h"),
                    new KeepTogether(new Flowing("b", 50, 40))
                )
            )
            .ShouldBe("1: a 0 0 50x90\n2: h 0 0 50x20 b 0 20 50x40");

    [Test]
    public void Nothing_is_lost_when_all_are_kept_with_the_next() =>
        LayoutOf
            .Pages(new Stack(Head("h", 70), Head("i", 70), Head("j", 70)))
            .ShouldBe("1: h 0 0 50x70 i 0 70 50x70\n2: j 0 0 50x70");
}
