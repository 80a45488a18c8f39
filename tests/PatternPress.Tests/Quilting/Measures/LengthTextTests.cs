using PatternPress.Quilting.Measures;

namespace PatternPress.Tests.Quilting.Measures;

public sealed class LengthTextTests
{
    [TestCase("12 1/2", "12 1/2")]
    [TestCase("12½", "12 1/2")]
    [TestCase("12 ½", "12 1/2")]
    [TestCase("12.5", "12 1/2")]
    [TestCase("12,5", "12 1/2")]
    [TestCase("12 1/2 in", "12 1/2")]
    [TestCase("12 1/2\"", "12 1/2")]
    [TestCase("12-1/2 in", "12 1/2")]
    [TestCase("12 1/2''", "12 1/2")]
    [TestCase("12 1/2 in.", "12 1/2")]
    [TestCase("⅞", "7/8")]
    [TestCase("1 yd", "36")]
    [TestCase("5/8 yd", "22 1/2")]
    [TestCase("25.4 mm", "1")]
    [TestCase("2.54 cm", "1")]
    [TestCase("1/8", "1/8")]
    [TestCase(" 3 ", "3")]
    public void A_measure_is_read_as_the_trade_writes_it(string text, string inches)
    {
        LengthText
            .TryParse(text, LengthUnit.Inch, out Length length, out string problem)
            .ShouldBeTrue(problem);
        LengthText.Inches(length).ShouldBe(inches);
    }

    [TestCase("1/0", "\"1/0\" divides by zero")]
    [TestCase("NaN", "\"NaN\" is not a measure")]
    [TestCase("∞", "\"∞\" is not a measure")]
    [TestCase("1e9", "\"1e9\" is not a number; write 12 1/2, 12½ or 12.5")]
    [TestCase("12 furlongs", "\"furlongs\" is not a unit; use in, yd or cm")]
    [TestCase("999999999", "\"999999999\" is larger than anything in a quilt (limit 10,000 in)")]
    [TestCase(
        "99999999999999999999999999",
        "\"99999999999999999999999999\" is not a number; write 12 1/2, 12½ or 12.5"
    )]
    [TestCase("1/1000000", "\"1/1000000\" is finer than any ruler")]
    [TestCase("12 5/2", "\"12 5/2\" has a fraction of one or more after its whole number")]
    [TestCase(
        "5.333333333333333333333333333333333333333333333333",
        "\"5.33333333333333333333333333333333333333…\" is not a number; write 12 1/2, 12½ or 12.5"
    )]
    [TestCase("1/2/3", "\"1/2/3\" is not a number; write 12 1/2, 12½ or 12.5")]
    [TestCase("", "\"\" is not a measure")]
    public void What_is_no_measure_is_refused_in_words(string text, string expected)
    {
        LengthText.TryParse(text, LengthUnit.Inch, out _, out string problem).ShouldBeFalse();
        problem.ShouldBe(expected);
    }

    // Decimals to sixteenths (catbirdquilts, 2014-02-07) and yard fractions (quiltingboard tutorial t280955).
    [TestCase("0.0625", "1/16")]
    [TestCase("0.1875", "3/16")]
    [TestCase("0.3125", "5/16")]
    [TestCase("0.4375", "7/16")]
    [TestCase("0.5625", "9/16")]
    [TestCase("0.6875", "11/16")]
    [TestCase("0.8125", "13/16")]
    [TestCase("0.9375", "15/16")]
    [TestCase("1/8 yd", "4 1/2")]
    [TestCase("1/6 yd", "6")]
    [TestCase("1/3 yd", "12")]
    [TestCase("3/8 yd", "13 1/2")]
    [TestCase("2/3 yd", "24")]
    [TestCase("7/8 yd", "31 1/2")]
    public void Published_decimals_and_yard_fractions_are_exact(string text, string inches)
    {
        LengthText.TryParse(text, LengthUnit.Inch, out Length length, out _).ShouldBeTrue();
        LengthText.Inches(length).ShouldBe(inches);
    }
}
