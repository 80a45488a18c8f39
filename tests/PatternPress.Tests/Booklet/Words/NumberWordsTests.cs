using PatternPress.Booklet.Words;
using PatternPress.Quilting.Measures;

namespace PatternPress.Tests.Booklet.Words;

public sealed class NumberWordsTests
{
    private static readonly NumberWords Inches = new(LengthUnit.Inch, BookletTemplates.Labels);
    private static readonly NumberWords Centimetres = new(
        LengthUnit.Centimetre,
        BookletTemplates.Labels
    );

    [Test]
    public void Inches_are_mixed_numbers_that_never_break()
    {
        Inches.Measure(Length.FromInches(3, 1, 2)).ShouldBe("3 1/2\u00a0in");
        Inches
            .Size(Length.FromInches(3, 1, 2), Length.FromInches(6, 7, 8))
            .ShouldBe("3 1/2\u00a0×\u00a06 7/8\u00a0in");
        Inches.Square(Length.FromInches(4), Length.FromInches(4)).ShouldBe("4\u00a0in square");
    }

    // Yards as eighths: handbook table of yard fractions (quiltingboard t280955): 22 1/2 in = 5/8 yd, 12 in = 1/3 yd.
    [TestCase(22.5, false, "5/8\u00a0yd")]
    [TestCase(36, false, "1\u00a0yd")]
    [TestCase(49, false, "1 3/8\u00a0yd")]
    [TestCase(12, true, "1/3\u00a0yd")]
    [TestCase(0, false, "–")]
    public void Yards_are_fractions(double inches, bool thirds, string expected) =>
        Inches
            .Yards(
                Yardage.RoundUp(
                    Length.FromInches(new Rational((long)(inches * 2), 2)),
                    Length.FromYards(new Rational(1, 8)),
                    thirds
                )
            )
            .ShouldBe(expected);

    [Test]
    public void Metric_measures_are_decimals()
    {
        Centimetres.Measure(Length.FromCentimetres(new Rational(15, 2))).ShouldBe("7.5\u00a0cm");
        Centimetres
            .Yards(Yardage.RoundUp(Length.FromCentimetres(125), Length.FromCentimetres(10)))
            .ShouldBe("1.3\u00a0m");
    }

    [Test]
    public void Sizes_that_differ_say_which_is_which()
    {
        new Sized([("Crib", "3 in"), ("Throw", "3 in"), ("Queen", "4 in")], "or")
            .ToString()
            .ShouldBe("3 in (Crib, Throw) or 4 in (Queen)");
        new Sized([("Crib", "3 in"), ("Throw", "4 in"), ("Queen", "5 in")], "or")
            .ToString()
            .ShouldBe("3 in (Crib), 4 in (Throw) or 5 in (Queen)");
        new Sized([("Crib", "3 in"), ("Throw", "3 in")], "or").ToString().ShouldBe("3 in");
        new Sized([], "or").ToString().ShouldBe("");
    }
}
