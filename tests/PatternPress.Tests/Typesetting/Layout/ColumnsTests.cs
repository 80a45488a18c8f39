using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;
using Shouldly;

namespace PatternPress.Tests.Typesetting.Layout;

public class ColumnsTests
{
    [Test]
    public void Shares_divide_the_width() =>
        LayoutOf
            .Pages(
                new Columns(Column.Share(new Wide("a", 10)), Column.Share(new Wide("b", 20), 3))
                {
                    Gap = 0.Pt,
                }
            )
            .ShouldBe("1: a 0 0 25x10 b 25 0 75x20");

    [Test]
    public void Fixed_columns_take_theirs_first() =>
        LayoutOf
            .Pages(
                new Columns(Column.Fixed(30.Pt, new Wide("a", 10)), Column.Share(new Wide("b", 20)))
                {
                    Gap = 10.Pt,
                }
            )
            .ShouldBe("1: a 0 0 30x10 b 40 0 60x20");

    [Test]
    public void Natural_columns_take_what_they_want() =>
        LayoutOf
            .Pages(
                new Columns(Column.Natural(new Solid("a", 22, 10)), Column.Share(new Wide("b", 20)))
                {
                    Gap = 10.Pt,
                }
            )
            .ShouldBe("1: a 0 0 22x10 b 32 0 68x20");

    [Test]
    public void Natural_columns_shrink_between_need_and_wish() =>
        LayoutOf
            .Pages(
                new Columns(
                    Column.Natural(new Stack(new Flowing("a", 80, 10))),
                    Column.Natural(new Solid("b", 40, 20))
                )
                {
                    Gap = 0.Pt,
                }
            )
            .ShouldBe("1: a 0 0 80x10 b 60 0 40x20");

    [Test]
    public void What_does_not_fit_moves_all_columns() =>
        LayoutOf
            .Pages(
                new Stack(
                    new Solid("a", 50, 100),
                    new Columns(
                        Column.Share(new Solid("b", 40, 10)),
                        Column.Share(new Solid("c", 40, 50))
                    )
                    {
                        Gap = 0.Pt,
                    }
                )
            )
            .ShouldBe("1: a 0 0 50x100\n2: b 0 0 40x10 c 50 0 40x50");

    [Test]
    public void Columns_that_flow_are_divided_and_keep_their_places() =>
        LayoutOf
            .Pages(
                new Stack(
                    new Solid("a", 50, 100),
                    new Columns(
                        Column.Share(new Solid("b", 40, 10)),
                        Column.Share(new Flowing("c", 40, 50))
                    )
                    {
                        Gap = 0.Pt,
                    },
                    new Solid("d", 10, 10)
                )
            )
            .ShouldBe("1: a 0 0 50x100 b 0 100 40x10 c 50 100 40x40\n2: c 50 0 40x10 d 0 10 10x10");

    [Test]
    public void They_are_as_tall_as_the_tallest() =>
        LayoutOf
            .Pages(
                new Stack(
                    new Columns(
                        Column.Share(new Solid("a", 10, 30)),
                        Column.Share(new Solid("b", 10, 50))
                    )
                    {
                        Gap = 0.Pt,
                    },
                    new Solid("c", 10, 10)
                )
            )
            .ShouldBe("1: a 0 0 10x30 b 50 0 10x50 c 0 50 10x10");

    [Test]
    public void Content_may_stand_in_the_middle_or_at_the_bottom() =>
        LayoutOf
            .Pages(
                new Columns(
                    Column.Share(new Solid("a", 10, 10)) with
                    {
                        Vertical = VerticalAlignment.Middle,
                    },
                    Column.Share(new Solid("b", 10, 30)),
                    Column.Share(new Solid("c", 10, 20)) with
                    {
                        Vertical = VerticalAlignment.Bottom,
                    }
                )
                {
                    Gap = 5.Pt,
                }
            )
            .ShouldBe("1: a 0 10 10x10 b 35 0 10x30 c 70 10 10x20");

    [Test]
    public void Too_narrow_shares_are_stacked() =>
        LayoutOf
            .Pages(
                new Columns(Column.Share(new Wide("a", 10)), Column.Fixed(70.Pt, new Wide("b", 20)))
                {
                    Gap = 5.Pt,
                    StackBelow = 30.Pt,
                }
            )
            .ShouldBe("1: a 0 0 100x10 b 0 15 100x20");

    [Test]
    public void A_share_gets_at_least_what_it_needs() =>
        LayoutOf
            .Pages(
                new Columns(Column.Share(new Solid("a", 70, 10)), Column.Share(new Wide("b", 20)))
                {
                    Gap = 0.Pt,
                }
            )
            .ShouldBe("1: a 0 0 70x10 b 70 0 30x20");

    [Test]
    public void Taller_than_a_page_they_are_placed_and_reported() =>
        LayoutOf
            .Pages(
                new Columns(
                    Column.Share(new Solid("a", 10, 150)),
                    Column.Share(new Solid("b", 10, 10))
                )
                {
                    Gap = 0.Pt,
                }
            )
            .ShouldBe("1: a 0 0 10x150 b 50 0 10x10\nTooTall on page 1");
}
