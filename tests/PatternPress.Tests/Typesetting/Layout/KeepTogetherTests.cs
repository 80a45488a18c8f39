using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;
using Shouldly;

namespace PatternPress.Tests.Typesetting.Layout;

public class KeepTogetherTests
{
    static KeepTogether Kept(params Block[] items) => new(new Stack(items));

    [Test]
    public void Stays_where_all_fits() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 80), Kept(new Flowing("b", 50, 60))))
            .ShouldBe("1: a 0 0 50x80 b 0 80 50x60");

    [Test]
    public void Moves_where_it_would_be_divided() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 81), Kept(new Flowing("b", 50, 60))))
            .ShouldBe("1: a 0 0 50x81\n2: b 0 0 50x60");

    [Test]
    public void Rather_than_leave_more_than_its_share_of_a_page_empty_it_is_divided() =>
        LayoutOf
            .Pages(
                new Stack(
                    new Solid("a", 50, 81),
                    Kept(new Flowing("b", 50, 60)) with
                    {
                        MostEmpty = 0.4,
                    }
                )
            )
            .ShouldBe("1: a 0 0 50x81 b 0 81 50x59\n2: b 0 0 50x1");

    [Test]
    public void Where_less_is_left_empty_it_moves() =>
        LayoutOf
            .Pages(
                new Stack(
                    new Solid("a", 50, 85),
                    Kept(new Flowing("b", 50, 60)) with
                    {
                        MostEmpty = 0.4,
                    }
                )
            )
            .ShouldBe("1: a 0 0 50x85\n2: b 0 0 50x60");

    [Test]
    public void Several_blocks_stay_together() =>
        LayoutOf
            .Pages(
                new Stack(
                    new Solid("a", 50, 80),
                    Kept(new Solid("b", 50, 40), new Solid("c", 50, 40))
                )
            )
            .ShouldBe("1: a 0 0 50x80\n2: b 0 0 50x40 c 0 40 50x40");

    [Test]
    public void Taller_than_a_page_it_is_divided_from_the_top_of_the_next() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 80), Kept(new Flowing("b", 50, 150))))
            .ShouldBe("1: a 0 0 50x80\n2: b 0 0 50x140\n3: b 0 0 50x10");

    [Test]
    public void At_the_top_it_behaves_like_its_content() =>
        LayoutOf.Pages(Kept(new Flowing("b", 50, 150))).ShouldBe("1: b 0 0 50x140\n2: b 0 0 50x10");

    [Test]
    public void Nested_it_moves_once() =>
        LayoutOf
            .Pages(
                new Stack(new Solid("a", 50, 100), new KeepTogether(Kept(new Flowing("b", 50, 60))))
            )
            .ShouldBe("1: a 0 0 50x100\n2: b 0 0 50x60");

    [Test]
    public void A_kept_part_within_a_long_kept_block_still_stays_whole() =>
        LayoutOf
            .Pages(Kept(new Flowing("a", 50, 100), Kept(new Flowing("b", 50, 60))))
            .ShouldBe("1: a 0 0 50x100\n2: b 0 0 50x60");

    [Test]
    public void Exactly_a_page_fits() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 1), Kept(new Flowing("b", 50, 140))))
            .ShouldBe("1: a 0 0 50x1\n2: b 0 0 50x140");

    [Test]
    public void An_indivisible_block_taller_than_a_page_is_reported() =>
        LayoutOf
            .Pages(Kept(new Solid("b", 50, 150)))
            .ShouldBe("1: b 0 0 50x150\nTooTall on page 1");

    [Test]
    public void In_columns_it_keeps_its_column() =>
        LayoutOf
            .Pages(
                new Stack(
                    new Solid("a", 50, 100),
                    new Columns(
                        Column.Share(Kept(new Flowing("b", 40, 60))),
                        Column.Share(new Flowing("c", 40, 20))
                    )
                    {
                        Gap = 0.Pt,
                    }
                )
            )
            .ShouldBe("1: a 0 0 50x100\n2: b 0 0 40x60 c 50 0 40x20");
}
