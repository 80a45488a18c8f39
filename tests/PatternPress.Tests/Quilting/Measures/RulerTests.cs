using PatternPress.Quilting.Measures;

namespace PatternPress.Tests.Quilting.Measures;

public sealed class RulerTests
{
    // Quilter's Cache, "Math Charts" (Marcia Hohn, 2002): diagonals to the nearest 1/8 in.
    [TestCase(4, "5 5/8")]
    [TestCase(5, "7 1/8")]
    [TestCase(6, "8 1/2")]
    [TestCase(7, "9 7/8")]
    [TestCase(8, "11 3/8")]
    [TestCase(9, "12 3/4")]
    [TestCase(10, "14 1/8")]
    [TestCase(12, "17")]
    [TestCase(14, "19 3/4")]
    public void Published_diagonals_are_the_nearest_eighth(int side, string diagonal) =>
        LengthText
            .Inches(Ruler.Eighths.Nearest(Length.FromInches(side) * Exact.SquareRootOfTwo))
            .ShouldBe(diagonal);

    [Test]
    public void What_is_cut_is_never_too_small()
    {
        Length third = Length.FromInches(3, 1, 3);
        LengthText.Inches(Ruler.Eighths.Up(third)).ShouldBe("3 3/8");
        LengthText.Inches(Ruler.Eighths.Down(third)).ShouldBe("3 1/4");
        Ruler.Eighths.Shows(third).ShouldBeFalse();
        Ruler.Eighths.Up(Length.FromInches(3, 3, 8)).ShouldBe(Length.FromInches(3, 3, 8));
    }

    [Test]
    public void The_metric_ruler_marks_half_centimetres() =>
        Ruler
            .HalfCentimetres.Up(Length.FromCentimetres(new Rational(113, 10)))
            .ShouldBe(Length.FromCentimetres(new Rational(23, 2)));

    [TestCase(13, 1, "3/8", false)]
    [TestCase(12, 1, "1/3", true)]
    [TestCase(25, 2, "3/8", true)]
    public void Yardage_goes_up_to_what_a_shop_cuts(
        int numerator,
        int denominator,
        string yards,
        bool thirds
    ) =>
        LengthText
            .Mixed(
                Yardage
                    .RoundUp(
                        Length.FromInches(new Rational(numerator, denominator)),
                        Length.FromInches(4, 1, 2),
                        thirds
                    )
                    .Yards
            )
            .ShouldBe(yards);
}
