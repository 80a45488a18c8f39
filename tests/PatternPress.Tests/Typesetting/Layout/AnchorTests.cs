using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using Shouldly;

namespace PatternPress.Tests.Typesetting.Layout;

public class AnchorTests
{
    static IEnumerable<string> Places(Block body) =>
        LayoutOf
            .Typeset(body)
            .Anchors.Select(anchor =>
                $"{anchor.Name} {anchor.Level} {anchor.Title} {anchor.Page} {anchor.Y}"
            );

    [Test]
    public void Anchors_tell_page_and_place() =>
        Places(
                new Stack(
                    new Anchor("x", 1, "First"),
                    new Solid("a", 10, 30),
                    new Anchor("y"),
                    new Solid("b", 10, 20)
                )
            )
            .ShouldBe(["x 1 First 1 0", "y 0  1 30"]);

    [Test]
    public void An_anchor_moves_with_what_follows() =>
        Places(new Stack(new Solid("a", 10, 100), new Anchor("x"), new Solid("b", 10, 50)))
            .ShouldBe(["x 0  2 0"]);

    [Test]
    public void An_anchor_before_a_page_break_moves_along() =>
        Places(
                new Stack(
                    new Solid("a", 10, 100),
                    new Anchor("x"),
                    new PageBreak(),
                    new Solid("b", 10, 50)
                )
            )
            .ShouldBe(["x 0  2 0"]);

    [Test]
    public void A_name_used_twice_is_reported() =>
        LayoutOf
            .Typeset(new Stack(new Anchor("x"), new Solid("a", 10, 10), new Anchor("x")))
            .Problems.Single()
            .Kind.ShouldBe(LayoutProblemKind.RepeatedAnchor);

    [Test]
    public void Names_may_be_left_out() =>
        LayoutOf
            .Typeset(
                new Stack(new Anchor("", 1, "A"), new Solid("a", 10, 10), new Anchor("", 1, "B"))
            )
            .Problems.ShouldBeEmpty();

    [Test]
    public void Anchors_in_table_cells_are_found() =>
        Places(
                new Table(
                    [TableColumn.Share()],
                    [
                        new TableRow(
                            new TableCell(new Stack(new Anchor("x"), new Solid("a", 10, 10)))
                        ),
                    ]
                )
                {
                    Style = TableStyle.Bare,
                }
            )
            .ShouldBe(["x 0  1 3"]);
}
