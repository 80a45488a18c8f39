using PatternPress.Typesetting;
using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Layout;

namespace PatternPress.Tests.Typesetting.Layout;

public class PageSequenceTests
{
    static readonly PageFrame Frame = new(new PaperSize(100.Pt, 140.Pt), Insets.None);

    static PageSequence Of(params Block[] blocks) => new(Frame, new Stack(blocks) { Gap = 20.Pt });

    [Test]
    public void Each_sequence_starts_on_a_new_page() =>
        LayoutOf
            .Tell(LayoutOf.Typeset(Of(new Solid("a", 50, 30)), Of(new Solid("b", 50, 30))))
            .ShouldBe("1: a 0 0 50x30\n2: b 0 0 50x30");

    [Test]
    public void One_that_joins_goes_on_where_enough_is_left() =>
        LayoutOf
            .Tell(
                LayoutOf.Typeset(
                    Of(new Solid("a", 50, 30)),
                    Of(new Solid("b", 50, 30), new Solid("c", 50, 80)) with
                    {
                        Joins = 110.Pt,
                    }
                )
            )
            .ShouldBe("1: a 0 0 50x30 b 0 30 50x30\n2: c 0 0 50x80");

    [Test]
    public void It_starts_a_page_where_too_little_is_left() =>
        LayoutOf
            .Tell(
                LayoutOf.Typeset(
                    Of(new Solid("a", 50, 31)),
                    Of(new Solid("b", 50, 30)) with
                    {
                        Joins = 110.Pt,
                    }
                )
            )
            .ShouldBe("1: a 0 0 50x31\n2: b 0 0 50x30");

    [Test]
    public void It_starts_a_page_where_nothing_of_it_fits() =>
        LayoutOf
            .Tell(
                LayoutOf.Typeset(
                    Of(new Solid("a", 50, 30)),
                    Of(new Solid("b", 50, 120)) with
                    {
                        Joins = 60.Pt,
                    }
                )
            )
            .ShouldBe("1: a 0 0 50x30\n2: b 0 0 50x120");

    [Test]
    public void The_first_density_that_saves_a_page_is_taken() =>
        LayoutOf
            .Tell(LayoutOf.Typeset(Three(40) with { Densities = [1, 0.5, 0.25] }))
            .ShouldBe("1: a 0 0 50x40 b 0 50 50x40 c 0 100 50x40");

    [Test]
    public void Spaces_stay_where_closing_them_saves_nothing() =>
        LayoutOf
            .Tell(LayoutOf.Typeset(Three(60) with { Densities = [1, 0.5, 0.25] }))
            .ShouldBe("1: a 0 0 50x60 b 0 80 50x60\n2: c 0 0 50x60");

    [Test]
    public void A_nearly_empty_page_is_reported_unless_it_is_the_last() =>
        LayoutOf
            .Tell(
                LayoutOf.Typeset(
                    Of(new Solid("a", 50, 34)) with
                    {
                        LeastFilled = 0.25,
                    },
                    Of(new Solid("b", 50, 35)) with
                    {
                        LeastFilled = 0.25,
                    },
                    Of(new Solid("c", 50, 10)) with
                    {
                        LeastFilled = 0.25,
                    }
                )
            )
            .ShouldBe("1: a 0 0 50x34\n2: b 0 0 50x35\n3: c 0 0 50x10\nNearlyEmpty on page 1");

    [Test]
    public void Trouble_of_an_attempt_that_was_given_up_is_forgotten() =>
        LayoutOf
            .Typeset(
                Of(new Solid("a", 50, 40), new Solid("b", 50, 40), new TooTallUnlessTight("c")) with
                {
                    Densities = [1, 0.5],
                }
            )
            .Problems.ShouldBeEmpty();

    static PageSequence Three(int height) =>
        Of(new Solid("a", 50, height), new Solid("b", 50, height), new Solid("c", 50, height));

    /// <summary>Complains wherever less than 40 pt are left, as where spaces are wide.</summary>
    sealed record TooTallUnlessTight(string Name) : Block
    {
        public override Fit Fit(LayoutContext context, Room room)
        {
            if (room.AtTop)
            {
                context.Report(LayoutProblemKind.TooTall, "not tight");
            }

            return new Solid(Name, 50, 40).Fit(context, room);
        }

        public override WidthRange Widths(LayoutContext context) => new(50.Pt, 50.Pt);
    }
}
