using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Finishing;
using PatternPress.Quilting.Measures;
using PatternPress.Tests.Quilting.Cutting;
using PatternPress.Tests.Quilting.Techniques;

namespace PatternPress.Tests.Quilting.Finishing;

/// <summary>Bias binding from squares, and quilts with rounded corners.</summary>
public sealed class BiasBindingTests
{
    private static readonly Length _quarter = Length.FromInches(0, 1, 4);

    // Published squares for continuous bias, side = √(length × width) rounded up: mydecozo.co.uk FAQ 680 (250 × 2 -> 23);
    // quiltersquestiontime.com 2021-08-05 (100 × 3 1/2 -> 19); getasquiltingstudio.com 2018-04 (55 × 2 1/2 -> 12). The rule leaves out
    // the two seams and the strip that is too narrow at the end: our squares are larger by up to as much as that takes.
    [TestCase("250", "2", 23, 24)]
    [TestCase("100", "3 1/2", 19, 20)]
    [TestCase("55", "2 1/2", 12, 14)]
    public void Squares_are_those_published_and_what_seams_take(
        string length,
        string width,
        long published,
        long ours
    )
    {
        Length needed = Written.Inches(length),
            strip = Written.Inches(width);
        double root = Math.Sqrt((needed * strip).SquareInches.ToDouble());
        ((long)Math.Ceiling(root)).ShouldBe(published);
        (long squares, Length side) = BiasSquare
            .For(needed, strip, _quarter, Length.FromInches(40), Length.FromInches(1), strip)
            .ShouldNotBeNull();
        squares.ShouldBe(1);
        side.ShouldBe(Length.FromInches(ours));
        // The published square falls short once its seams are sewn.
        BiasSquare.Yield(Length.FromInches(published), strip, _quarter).ShouldBeLessThan(needed);
    }

    // By areas: rounds of whole strips never hold more cloth than the square less its two seams, and without seams and with strips
    // that divide it exactly they hold all of it.
    [Test]
    public void A_square_gives_no_more_cloth_than_it_has()
    {
        for (int side = 4; side <= 40; side++)
        {
            for (int eighths = 8; eighths <= 32; eighths += 3)
            {
                Length square = Length.FromInches(side),
                    width = Length.FromInches(0, eighths, 8);
                double cloth = (side - 1.0) * side;
                (
                    BiasSquare.Yield(square, width, _quarter).Inches.ToDouble() * eighths / 8
                ).ShouldBeLessThanOrEqualTo(cloth + 1e-9);
            }
        }
        Length diagonal = Length.FromInches(20) * Exact.SquareRootOfTwo;
        (
            BiasSquare.Yield(Length.FromInches(20), diagonal / 10, Length.Zero) * (diagonal / 10)
        ).SquareInches.ShouldBe(400);
    }

    // A corner of radius r runs πr/2 instead of 2r: four corners of 6 1/4 in at the raw edge take 8 × 6 1/4 − 2π × 6 1/4 = 10.73 in off.
    [Test]
    public void Rounded_corners_shorten_the_way_around()
    {
        BindingPlan plan = Makings
            .Top("60", "80", quilt: "rounded-corners: 6")
            .Binding.ShouldNotBeNull();
        double exactly = 280 - (8 * 6.25) + (2 * Math.PI * 6.25);
        plan.Perimeter.Inches.ToDouble().ShouldBe(exactly, 0.125);
        plan.Perimeter.Inches.ToDouble().ShouldBeGreaterThanOrEqualTo(exactly);
        plan.Perimeter.ShouldBe(Written.Inches("269 3/8"));
    }

    [Test]
    public void The_squares_give_what_is_needed_and_smaller_ones_would_not()
    {
        for (int width = 10; width <= 150; width += 9)
        {
            SizeMaking size = Makings.Top(
                $"{width}",
                "71",
                quilt: "rounded-corners: 3",
                binding: "{fabric: B, cut: bias}"
            );
            BindingPlan plan = size.Binding.ShouldNotBeNull();
            Length side = plan.Square.ShouldNotBeNull();
            plan.Available.ShouldBeGreaterThanOrEqualTo(plan.Needed);
            Length less = BiasSquare.Yield(side - Length.FromInches(1), plan.StripWidth, _quarter);
            ((less * plan.Strips) - (plan.JoinLoss * (plan.Strips - 1))).ShouldBeLessThan(
                plan.Needed
            );
            size.Cuts.Single(cut => cut.Purpose is CutPurpose.BiasSquare).Width.ShouldBe(side);
        }
    }
}
