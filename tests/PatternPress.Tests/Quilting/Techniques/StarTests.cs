using CsCheck;
using NUnit.Framework;
using PatternPress.Quilting.Cutting.Planning;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques;
using PatternPress.Quilting.Techniques.Kinds;
using Shouldly;

namespace PatternPress.Tests.Quilting.Techniques;

/// <summary>Eight-pointed stars of 45° diamonds.</summary>
public class StarTests
{
    // Karen Combs, "Formulas for Quilters", 2002: the block of an eight-pointed star is 3.41 times the finished side of a
    // diamond. Exactly it is 2 + √2 = 3.41421…; the published factor is that cut off after two places, so a block of it is too
    // small by 0.0042 of a diamond's side: 1/80 in for diamonds of 3 in, less than half a mark of the eighth-inch ruler up to
    // 14 in.
    [Test]
    public void The_block_is_two_and_the_root_of_two_times_a_diamonds_side()
    {
        for (int side = 1; side <= 14; side++)
        {
            Length exact = EightPointStar.SizeOf(Length.FromInches(side));
            exact.Inches.ShouldBe(new Exact(2 * side, side));
            double published = 3.41 * side;
            double difference = exact.Inches.ToDouble() - published;
            difference.ShouldBe((2 + Math.Sqrt(2) - 3.41) * side, 1e-9);
            difference.ShouldBeInRange(0, 1.0 / 16);
            Math.Floor(exact.Inches.ToDouble() / side * 100).ShouldBe(341);
            EightPointStar.DiamondOf(exact).ShouldBe(Length.FromInches(side));
        }
        // Tables that take 1.414 for √2 come within 0.0002 of a side.
        (2 + 1.414).ShouldBe(2 + Math.Sqrt(2), 0.00022);
    }

    // By hand, common practice, no source: a 12 in star has diamonds of 12 / 3.4142 = 3.5147 in, 2.4853 in from edge to edge,
    // cut 3 in at 3 in; squares of 4.015 in, triangles from a square of 4.9706 + 1.2071 = 6.178 in.
    [Test]
    public void Star_of_twelve_inches()
    {
        Recipe recipe = Recipes.Of("eight-point-star-set-in", "eight-point-star, a b on c", "12");
        Recipes
            .Cuts(recipe)
            .ShouldBe(
                "1 diamond [0] 40 × 3; 1 diamond [1] 40 × 3; 4 corner square [2] 4 1/8 × 4 1/8; 1 side square [2] 6 1/4 × 6 1/4"
            );
        recipe.Pieces[0].Slices.ShouldBe(4);
        // (40 − 3) / 4.2426 = 8.7.
        recipe.Pieces[0].InStrip.ShouldBe(8);
        recipe.Pieces[0].Exactly.Height.Inches.ShouldBe(new Exact(new Rational(-11, 2), 6));
        // Strips are counted for all stars at once.
        recipe.PiecesFor(5).Select(p => p.Count).ShouldBe([3, 3, 20, 5]);
        recipe.Trim.ShouldBeTrue();
    }

    // By hand, no source: halves of squares of 3.5147 + 0.8536 and 2.4853 + 0.8536 in.
    [Test]
    public void Star_of_twelve_inches_without_set_in_seams() =>
        Recipes
            .Cuts(
                Recipes.Of(
                    "eight-point-star-split-background",
                    "eight-point-star split, a on b",
                    "12"
                )
            )
            .ShouldBe(
                "1 diamond [0] 40 × 3; 4 large square [1] 4 3/8 × 4 3/8; 4 small square [1] 3 3/8 × 3 3/8"
            );

    // 8 / 4.8284 + 1/2 = 2.157 in lies between the marks; the strip of 2 1/4 in makes a star of 1 3/4 · 4.8284 = 8.45 in.
    [Test]
    public void Diamonds_between_the_marks_are_refused_with_the_sizes_that_would_do()
    {
        Recipes
            .Technique("eight-point-star-set-in")
            .CanMake(Written.Form("eight-point-star, a on b", "8"), Recipes.Inches, out string why)
            .ShouldBeFalse();
        why.ShouldBe(
            "its strips for diamonds, 2.157 in wide, are not near a mark of the ruler: cut 2 1/4 in they make a star of 8.45 in, cut 2 1/8 in one of 7.846 in"
        );
    }

    // A strip of the width of a diamond, cut across as far apart as it is wide, gives diamonds with sides of √2 times that,
    // and with a seam off every edge the finished diamond.
    [Test]
    public void Slices_of_a_strip_are_the_diamonds_with_their_seams()
    {
        Gen.Int[8, 400]
            .Sample(eighths =>
            {
                Length side = Length.FromInches(new Rational(eighths, 8));
                UnitForm form = Written.Draw("eight-point-star, a on b", side, side).Form;
                Length seam = Recipes.Inches.Seam;
                Length strip = StripOf(form, seam);
                // Area of the slice: height times slanted side.
                Area slice = strip * (strip * Exact.SquareRootOfTwo);
                Length finishedHeight = strip - (seam * 2);
                Area finished = finishedHeight * (finishedHeight * Exact.SquareRootOfTwo);
                form.Patches[0].Shape.Area.ShouldBe(finished);
                (slice - finished).SquareInches.Sign.ShouldBe(1);
                // Everything else fills the block exactly.
                Area sum = Area.Zero;
                foreach (RolePatch patch in form.Patches)
                {
                    sum += patch.Shape.Area;
                }
                sum.ShouldBe(side * side);
                SlantedPiece
                    .Diamond45(strip)
                    .LengthFor(1)
                    .ShouldBe(strip + (strip * Exact.SquareRootOfTwo));
            });
    }

    private static Length StripOf(UnitForm form, Length seam)
    {
        // The distance of the first diamond's upright edges.
        Rect bounds = form.Patches[0].Shape.Bounds;
        return bounds.Width + (seam * 2);
    }
}
