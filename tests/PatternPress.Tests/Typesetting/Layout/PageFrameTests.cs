using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using Shouldly;

namespace PatternPress.Tests.Typesetting.Layout;

public class PageFrameTests
{
    static readonly PageFrame Frame = new(
        new PaperSize(100.Pt, 140.Pt),
        new Insets(10.Pt, 20.Pt, 15.Pt, 30.Pt)
    )
    {
        Header = new Wide("head", 5),
        Footer = new Wide("foot", 6),
        HeaderGap = 4.Pt,
        FooterGap = 3.Pt,
    };

    [Test]
    public void Header_and_footer_stand_in_the_margins() =>
        LayoutOf
            .Tell(LayoutOf.Typeset(new Wide("a", 10), Frame))
            .ShouldBe("1: head 10 11 75x5 a 10 20 75x10 foot 10 113 75x6");

    [Test]
    public void They_are_artifacts_on_every_page() =>
        LayoutOf
            .Tags(LayoutOf.Typeset(new Flowing("a", 10, 100), Frame))
            .ShouldBe(
                "1: Artifact( head ) a Artifact( foot )\n2: Artifact( head ) a Artifact( foot )"
            );

    [Test]
    public void The_first_page_may_differ() =>
        LayoutOf
            .Tell(
                LayoutOf.Typeset(
                    new Flowing("a", 10, 100),
                    Frame with
                    {
                        FirstPageDiffers = true,
                        FirstFooter = new Wide("first", 7),
                    }
                )
            )
            .ShouldBe(
                "1: a 10 20 10x90 first 10 113 75x7\n2: head 10 11 75x5 a 10 20 10x10 foot 10 113 75x6"
            );

    [Test]
    public void A_background_covers_the_sheet()
    {
        var page = LayoutOf
            .Typeset(new Wide("a", 10), Frame with { Background = LayoutOf.Drawing(50, 70) })
            .Pages[0];
        page.Items[0]
            .ShouldBeOfType<PageItem.ArtifactBegin>()
            .Kind.ShouldBe(ArtifactKind.Background);
        page.Items.OfType<PageItem.Path>().First().Outline.Bounds().ShouldBe((0, 0, 100, 140));
    }

    [Test]
    public void A_footer_taller_than_its_margin_is_reported() =>
        LayoutOf
            .Typeset(new Wide("a", 10), Frame with { Footer = new Wide("foot", 28) })
            .Problems.Single()
            .ShouldSatisfyAllConditions(
                problem => problem.Kind.ShouldBe(LayoutProblemKind.FrameTooTall),
                problem => problem.Needed.ShouldBe(28.Pt),
                problem => problem.Available.ShouldBe(27.Pt)
            );
}
