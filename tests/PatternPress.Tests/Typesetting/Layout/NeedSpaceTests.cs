using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Pages;
using Shouldly;

namespace PatternPress.Tests.Typesetting.Layout;

public class NeedSpaceTests
{
    static Stack After(int height, int need, Block content) =>
        new(new Solid("a", 50, height), new NeedSpace(need.Pt, content));

    [Test]
    public void Begins_where_the_height_is_left() =>
        LayoutOf
            .Pages(After(100, 40, new Flowing("b", 50, 60)))
            .ShouldBe("1: a 0 0 50x100 b 0 100 50x40\n2: b 0 0 50x20");

    [Test]
    public void Moves_where_it_is_not() =>
        LayoutOf
            .Pages(After(101, 40, new Flowing("b", 50, 60)))
            .ShouldBe("1: a 0 0 50x101\n2: b 0 0 50x60");

    [Test]
    public void Moves_where_little_of_what_is_left_would_be_filled() =>
        LayoutOf
            .Pages(After(80, 50, new Stack(new Solid("b", 50, 19), new Solid("c", 50, 60))))
            .ShouldBe("1: a 0 0 50x80\n2: b 0 0 50x19 c 0 19 50x60");

    [Test]
    public void Begins_where_enough_of_it_would_be_filled() =>
        LayoutOf
            .Pages(After(80, 50, new Stack(new Solid("b", 50, 20), new Solid("c", 50, 60))))
            .ShouldBe("1: a 0 0 50x80 b 0 80 50x20\n2: c 0 0 50x60");

    [Test]
    public void Stays_where_all_of_it_fits_anyway() =>
        LayoutOf
            .Pages(After(120, 40, new Flowing("b", 50, 20)))
            .ShouldBe("1: a 0 0 50x120 b 0 120 50x20");

    [Test]
    public void At_the_top_it_begins_even_if_it_asks_for_more_than_a_page() =>
        LayoutOf
            .Pages(new NeedSpace(200.Pt, new Flowing("b", 50, 150)))
            .ShouldBe("1: b 0 0 50x140\n2: b 0 0 50x10");

    [Test]
    public void The_rest_asks_for_nothing() =>
        LayoutOf
            .Pages(new NeedSpace(100.Pt, new Flowing("b", 50, 290)))
            .ShouldBe("1: b 0 0 50x140\n2: b 0 0 50x140\n3: b 0 0 50x10");

    [Test]
    public void Its_content_may_move_by_itself() =>
        LayoutOf
            .Pages(After(100, 10, new Solid("b", 50, 60)))
            .ShouldBe("1: a 0 0 50x100\n2: b 0 0 50x60");
}
