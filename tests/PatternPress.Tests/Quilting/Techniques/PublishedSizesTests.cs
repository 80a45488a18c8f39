using NUnit.Framework;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques;
using Shouldly;

namespace PatternPress.Tests.Quilting.Techniques;

/// <summary>Cut sizes against published figures. The source stands beside each.</summary>
public class PublishedSizesTests
{
    private const string Half = "half-square upper-left, a on b";
    private const string Quarter = "quarter-square, a b";

    // North Hampshire Quilters, north-hampshire-quilters.org.uk/hblk402b.htm
    [TestCase("3", "3 7/8")]
    // Granny Maud's Girl, 2018-06-11, How to measure and cut triangles; UKQU, "size I cut triangles"
    [TestCase("2", "2 7/8")]
    // Quilting Passion, "Spools" block, 6, 9 and 12 in; quiltcg.com, Ohio Star 12 in
    [TestCase("4", "4 7/8")]
    // Delaware Quilts, Ohio Star Variation, 3 in block
    [TestCase("1", "1 7/8")]
    // American Patchwork & Quilting, "Half and Half"
    [TestCase("2 1/2", "3 3/8")]
    public void Half_square_triangles(string finished, string cut)
    {
        Recipes
            .Side(Recipes.Of("half-square-two-at-a-time", Half, finished), "square")
            .ShouldBe(cut);
        Recipe singles = Recipes.Of("half-square-single-triangles", Half, finished);
        Recipes.Side(singles, "square").ShouldBe(cut);
        singles.Pieces.ShouldAllBe(p => p.Cut == PieceCut.OnceDiagonally);
    }

    // North Hampshire Quilters
    [TestCase("3", "4 1/4")]
    // quiltcg.com, block of the month April 2015: Ohio Star 12 in, units 4 in
    [TestCase("4", "5 1/4")]
    // American Patchwork & Quilting, "Half and Half"
    [TestCase("2 1/2", "3 3/4")]
    public void Quarter_square_triangles(string finished, string cut)
    {
        Recipes
            .Side(Recipes.Of("quarter-square-two-at-a-time", Quarter, finished), "square")
            .ShouldBe(cut);
        Recipe singles = Recipes.Of("quarter-square-single-triangles", Quarter, finished);
        Recipes.Side(singles, "square").ShouldBe(cut);
        singles.Pieces.ShouldAllBe(p => p.Cut == PieceCut.TwiceDiagonally);
    }

    // Karen Combs, "Formulas for Quilters", 2002: square + 1/2, half-square + 7/8, quarter-square + 1 1/4.
    [Test]
    public void Allowances_in_eighths_for_every_size_on_the_ruler()
    {
        for (int eighths = 4; eighths <= 12 * 8; eighths++)
        {
            string finished = LengthText.Mixed(new Rational(eighths, 8));
            Length size = Written.Inches(finished);
            Recipe plain = Recipes.Of("plain-squares", "square a", finished);
            plain.Pieces[0].Width.ShouldBe(size + Length.FromInches(0, 1, 2));
            Recipe half = Recipes.Of("half-square-two-at-a-time", Half, finished);
            half.Pieces[0].Width.ShouldBe(size + Length.FromInches(0, 7, 8));
            half.Trim.ShouldBeFalse();
            Recipe quarter = Recipes.Of("quarter-square-two-at-a-time", Quarter, finished);
            quarter.Pieces[0].Width.ShouldBe(size + Length.FromInches(1, 1, 4));
            quarter.Trim.ShouldBeFalse();
        }
    }

    // quiltcg.com, Ohio Star: 2 + 2 squares cut twice give the 8 + 8 triangles of its four units.
    [Test]
    public void Four_quarter_square_units_take_two_squares_of_each_fabric()
    {
        Recipe recipe = Recipes.Of("quarter-square-single-triangles", Quarter, "4");
        recipe.PiecesFor(4).Select(p => p.Count).ShouldBe([2, 2]);
        recipe.PiecesFor(4).Sum(p => p.Count * 4).ShouldBe(16);
    }

    // North Hampshire Quilters: cut 1/4 in larger, 4 1/8 and 4 1/2, and trim to 3 1/2.
    [Test]
    public void Oversize_by_a_quarter_inch()
    {
        House house = Recipes.Oversize with { Oversize = Length.FromInches(0, 1, 4) };
        Recipe half = Recipes.Of("half-square-two-at-a-time", Half, "3", house: house);
        Recipes.Side(half, "square").ShouldBe("4 1/8");
        half.Trim.ShouldBeTrue();
        LengthText.Inches(half.UnfinishedWidth).ShouldBe("3 1/2");
        Recipe quarter = Recipes.Of("quarter-square-two-at-a-time", Quarter, "3", house: house);
        Recipes.Side(quarter, "square").ShouldBe("4 1/2");
        quarter.Trim.ShouldBeTrue();
        LengthText.Inches(quarter.UnfinishedWidth).ShouldBe("3 1/2");
    }

    // Delaware Quilts, Ohio Star Variation: quarter-squares cut finished + 1 3/8, an eighth oversize.
    [TestCase("1", "2 3/8")]
    [TestCase("2", "3 3/8")]
    [TestCase("3", "4 3/8")]
    [TestCase("4", "5 3/8")]
    public void Oversize_by_an_eighth(string finished, string cut) =>
        Recipes
            .Side(
                Recipes.Of(
                    "quarter-square-single-triangles",
                    Quarter,
                    finished,
                    house: Recipes.Oversize
                ),
                "square"
            )
            .ShouldBe(cut);

    // All People Quilt, "How to make eight triangle-squares at once": 1 1/2 finished, 2 3/8 doubled.
    [TestCase("1 1/2", "4 3/4", "2")]
    // Ashley Tomlinson, "Half-square triangles 8 at a time": 5 finished, 5.875 doubled.
    [TestCase("5", "11 3/4", "5 1/2")]
    public void Half_square_triangles_eight_at_a_time(
        string finished,
        string cut,
        string unfinished
    )
    {
        Recipe recipe = Recipes.Of("half-square-eight-at-a-time", Half, finished);
        Recipes.Side(recipe, "large square").ShouldBe(cut);
        recipe.Yield.ShouldBe(8);
        LengthText.Inches(recipe.UnfinishedWidth).ShouldBe(unfinished);
        recipe.Measures["half"].ShouldBe(recipe.Pieces[0].Width / 2);
    }

    // Beverly's Quilting Page, "Fast flying geese" (all seven rows); also Sylvia's Quilt Depot (4 × 2) and
    // Living in Stitches, 2009-09 (3 × 1 1/2).
    [TestCase("8", "4", "9 1/4", "4 7/8")]
    [TestCase("7", "3 1/2", "8 1/4", "4 3/8")]
    [TestCase("6", "3", "7 1/4", "3 7/8")]
    [TestCase("5", "2 1/2", "6 1/4", "3 3/8")]
    [TestCase("4", "2", "5 1/4", "2 7/8")]
    [TestCase("3", "1 1/2", "4 1/4", "2 3/8")]
    [TestCase("2", "1", "3 1/4", "1 7/8")]
    // American Patchwork & Quilting, "Twinkle, Twinkle"
    [TestCase("1 1/2", "3/4", "2 3/4", "1 5/8")]
    public void Flying_geese_four_at_a_time(string width, string height, string large, string small)
    {
        Recipe recipe = Recipes.Of("geese-four-at-a-time", "geese up, a on b", width, height);
        Recipes
            .Cuts(recipe)
            .ShouldBe(
                $"1 large square [0] {large} × {large}; 4 small square [1] {small} × {small}"
            );
        recipe.Yield.ShouldBe(4);
        recipe.Trim.ShouldBeFalse();
    }

    // American Patchwork & Quilting, "Striking Stars": 5 1/4 and four of 2 7/8 make units of 4 1/2 × 2 1/2.
    [Test]
    public void Flying_geese_unfinished()
    {
        Recipe recipe = Recipes.Of("geese-four-at-a-time", "geese up, a on b", "4", "2");
        LengthText.Inches(recipe.UnfinishedWidth).ShouldBe("4 1/2");
        LengthText.Inches(recipe.UnfinishedHeight).ShouldBe("2 1/2");
    }

    // Quilting Passion, 2004-07-07: small squares of finished height + 1, to be trimmed. (Its large squares are not
    // oversize; ours are by the same eighth, so that the point can be centered too.)
    [TestCase("4", "2", "3")]
    [TestCase("6", "3", "4")]
    [TestCase("8", "4", "5")]
    public void Flying_geese_oversize(string width, string height, string small)
    {
        Recipe recipe = Recipes.Of(
            "geese-four-at-a-time",
            "geese up, a on b",
            width,
            height,
            Recipes.Oversize
        );
        Recipes.Side(recipe, "small square").ShouldBe(small);
        recipe.Trim.ShouldBeTrue();
    }

    // Scissortail Quilting, "Square in a square": base F + 1/2, corners F/2 + 1/2, for 2 to 12 in.
    [TestCase("2", "2 1/2", "1 1/2")]
    [TestCase("3", "3 1/2", "2")]
    [TestCase("4", "4 1/2", "2 1/2")]
    [TestCase("5", "5 1/2", "3")]
    [TestCase("6", "6 1/2", "3 1/2")]
    [TestCase("7", "7 1/2", "4")]
    [TestCase("8", "8 1/2", "4 1/2")]
    [TestCase("9", "9 1/2", "5")]
    [TestCase("10", "10 1/2", "5 1/2")]
    [TestCase("11", "11 1/2", "6")]
    [TestCase("12", "12 1/2", "6 1/2")]
    public void Square_in_a_square_quick_corners(string finished, string large, string corner) =>
        Recipes
            .Cuts(
                Recipes.Of("square-in-square-quick-corners", "square-in-square, a on b", finished)
            )
            .ShouldBe(
                $"1 large square [0] {large} × {large}; 4 corner square [1] {corner} × {corner}"
            );

    // American Patchwork & Quilting, "Warm Welcome", 2022: 4 in unit, center 3 3/8, corner squares 2 7/8 cut once.
    [Test]
    public void Square_in_a_square_set_in_triangles()
    {
        Recipe recipe = Recipes.Of(
            "square-in-square-set-in-triangles",
            "square-in-square, a on b",
            "4"
        );
        Recipes
            .Cuts(recipe)
            .ShouldBe("1 center square [0] 3 3/8 × 3 3/8; 2 corner square [1] 2 7/8 × 2 7/8");
        recipe.Pieces[1].Cut.ShouldBe(PieceCut.OnceDiagonally);
    }

    // Scrapish, "Corner triangles for setting blocks on point": center 4 in finished, corner squares 3 3/4 to the
    // eighth. The unit around a 4 in center is 4√2 in.
    [Test]
    public void Corner_triangles_around_a_center_of_four_inches()
    {
        var side = new Length(new Exact(0, 4));
        UnitForm form = Written.Draw("square-in-square, a on b", side, side).Form;
        Recipe recipe = Recipes.Of("square-in-square-set-in-triangles", form);
        Recipes
            .Cuts(recipe)
            .ShouldBe("1 center square [0] 4 1/2 × 4 1/2; 2 corner square [1] 3 3/4 × 3 3/4");
    }

    // The same formulas in the trade's other units: 0.75 cm seams, half-centimetre ruler (common practice, no
    // source). 10 + 0.75 (2 + √2) = 12.56 and 10 + 0.75 (2 + 2√2) = 13.62.
    [Test]
    public void Metric_sizes_are_computed_in_centimetres_and_trimmed()
    {
        Length ten = Length.FromCentimetres(10);
        Recipe half = Recipes.Of(
            "half-square-two-at-a-time",
            Written.Draw(Half, ten, ten).Form,
            Recipes.Metric
        );
        half.Pieces[0].Width.ShouldBe(Length.FromCentimetres(13));
        half.Pieces[0].Exactly.Width.Centimetres.ToDouble().ShouldBe(12.5607, 1e-4);
        half.UnfinishedWidth.ShouldBe(Length.FromCentimetres(new Rational(23, 2)));
        half.Trim.ShouldBeTrue();
        Recipe quarter = Recipes.Of(
            "quarter-square-two-at-a-time",
            Written.Draw(Quarter, ten, ten).Form,
            Recipes.Metric
        );
        quarter.Pieces[0].Width.ShouldBe(Length.FromCentimetres(14));
        quarter.Trim.ShouldBeTrue();
    }
}
