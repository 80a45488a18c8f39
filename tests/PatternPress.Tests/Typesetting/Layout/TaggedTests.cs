using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using Shouldly;

namespace PatternPress.Tests.Typesetting.Layout;

public class TaggedTests
{
    [Test]
    public void A_divided_block_is_one_tag() =>
        LayoutOf
            .Tags(
                LayoutOf.Typeset(
                    new Tagged(
                        TagRole.Section,
                        new Stack(new Solid("a", 10, 100), new Flowing("b", 10, 50))
                    )
                )
            )
            .ShouldBe("1: Section1( a b )\n2: Section1( b )");

    [Test]
    public void What_moves_has_its_tag_where_it_stands() =>
        LayoutOf
            .Tags(
                LayoutOf.Typeset(
                    new Stack(
                        new Solid("a", 10, 100),
                        new Tagged(TagRole.Note, new Solid("b", 10, 50))
                    )
                )
            )
            .ShouldBe("1: a\n2: Note1( b )");

    [Test]
    public void Tags_nest_and_go_on_together() =>
        LayoutOf
            .Tags(
                LayoutOf.Typeset(
                    new Tagged(
                        TagRole.Section,
                        new Tagged(TagRole.Division, new Flowing("b", 10, 150))
                    )
                )
            )
            .ShouldBe("1: Section1( Division2( b ) )\n2: Section1( Division2( b ) )");

    [Test]
    public void An_artifact_holds_no_tags_links_or_anchors() =>
        LayoutOf
            .Tags(
                LayoutOf.Typeset(
                    new Artifact(
                        new Stack(
                            new Tagged(TagRole.Section, new Solid("a", 10, 10)),
                            new Anchor("x", 1, "X")
                        )
                    )
                )
            )
            .ShouldBe("1: Artifact( a )");

    [Test]
    public void Artifacts_within_artifacts_are_one() =>
        LayoutOf
            .Tags(LayoutOf.Typeset(new Artifact(new Artifact(new Solid("a", 10, 10)))))
            .ShouldBe("1: Artifact( a )");

    [Test]
    public void A_heading_inside_a_section_is_not_left_alone() =>
        LayoutOf
            .Pages(
                new Stack(
                    new Solid("a", 10, 100),
                    new Tagged(
                        TagRole.Section,
                        new Stack(new KeepWithNext(new Solid("h", 10, 20)), new Solid("b", 10, 50))
                    )
                )
            )
            .ShouldBe("1: a 0 0 10x100\n2: h 0 0 10x20 b 0 20 10x50");
}
