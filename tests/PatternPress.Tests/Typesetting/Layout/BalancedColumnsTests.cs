using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using Shouldly;

namespace PatternPress.Tests.Typesetting.Layout;

public class BalancedColumnsTests
{
    static Stack Words(int count) =>
        new(Enumerable.Range(1, count).Select(i => new Wide($"w{i}", 30)));

    static BalancedColumns Two(Block content) => new(content, 2) { Gap = 10.Pt };

    [Test]
    public void Columns_are_about_equally_high() =>
        LayoutOf
            .Pages(Two(Words(4)))
            .ShouldBe("1: w1 0 0 45x30 w2 0 30 45x30 w3 55 0 45x30 w4 55 30 45x30");

    [Test]
    public void The_first_takes_what_is_odd() =>
        LayoutOf.Pages(Two(Words(3))).ShouldBe("1: w1 0 0 45x30 w2 0 30 45x30 w3 55 0 45x30");

    [Test]
    public void What_follows_stands_below_the_highest() =>
        LayoutOf
            .Pages(new Stack(Two(Words(3)), new Solid("b", 50, 20)))
            .ShouldBe("1: w1 0 0 45x30 w2 0 30 45x30 w3 55 0 45x30 b 0 60 50x20");

    [Test]
    public void A_page_is_filled_column_by_column_before_the_next() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 80), Two(Words(6))))
            .ShouldBe(
                "1: a 0 0 50x80 w1 0 80 45x30 w2 0 110 45x30 w3 55 80 45x30 w4 55 110 45x30\n"
                    + "2: w5 0 0 45x30 w6 55 0 45x30"
            );

    [Test]
    public void Moves_where_not_even_its_first_part_fits() =>
        LayoutOf
            .Pages(new Stack(new Solid("a", 50, 120), Two(Words(2))))
            .ShouldBe("1: a 0 0 50x120\n2: w1 0 0 45x30 w2 55 0 45x30");

    [Test]
    public void Too_narrow_a_page_has_one_column() =>
        LayoutOf
            .Pages(Two(Words(2)) with { LeastWidth = 50.Pt })
            .ShouldBe("1: w1 0 0 100x30 w2 0 30 100x30");

    [Test]
    public void A_part_higher_than_a_page_is_reported() =>
        LayoutOf.Pages(Two(new Solid("w", 45, 150))).ShouldBe("1: w 0 0 45x150\nTooTall on page 1");
}
