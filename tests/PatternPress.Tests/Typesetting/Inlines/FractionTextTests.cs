using PatternPress.Typesetting.Inlines;
using Shouldly;

namespace PatternPress.Tests.Typesetting.Inlines;

public class FractionTextTests
{
    // Words in quotes, fractions in brackets, no-break spaces shown as ~.
    static string Parsed(string text) =>
        string.Concat(
                FractionText
                    .Parse(text)
                    .Select(piece =>
                        piece is Fraction fraction
                            ? $"[{fraction.Plain}]"
                            : $"'{((Run)piece).Text}'"
                    )
            )
            .Replace('\u00A0', '~');

    [TestCase("cut 12 1/2 in wide", "'cut '[12 1/2]'~in wide'")]
    [TestCase("1/4 in", "[1/4]'~in'")]
    [TestCase("3 11/32", "[3 11/32]")]
    [TestCase("12½", "[12 1/2]")]
    [TestCase("½ yd", "[1/2]'~yd'")]
    [TestCase("12-1/2 in", "[12 1/2]'~in'")]
    [TestCase("2 1/2 × 4 1/2 in", "[2 1/2]'~× '[4 1/2]'~in'")]
    [TestCase("2 1/2\" strips", "[2 1/2]'\" strips'")]
    [TestCase("2 1/2-inch strips", "[2 1/2]'-inch strips'")]
    [TestCase("40 in", "'40~in'")]
    [TestCase("30 cm", "'30~cm'")]
    [TestCase("12 squares", "'12 squares'")]
    [TestCase("12 inside", "'12 inside'")]
    [TestCase("on 1/2/26", "'on 1/2/26'")]
    [TestCase("A1/2", "'A1/2'")]
    [TestCase("1/2a", "'1/2a'")]
    [TestCase("and/or", "'and/or'")]
    [TestCase("12.5 in", "'12.5~in'")]
    [TestCase("1,250 1/2", "'1,250 '[1/2]")]
    [TestCase("(1/2)", "'('[1/2]')'")]
    [TestCase("1/0", "'1/0'")]
    [TestCase("12 5/4", "'12 '[5/4]")]
    [TestCase("3/8.", "[3/8]'.'")]
    [TestCase("", "")]
    [TestCase("12345678901234567890/3", "'12345678901234567890/3'")]
    public void Fractions_and_units_are_found(string text, string expected) =>
        Parsed(text).ShouldBe(expected);

    [Test]
    public void The_plain_words_come_back() =>
        FractionText
            .Plain(FractionText.Parse("cut 12 1/2 in by 3 5/16 in"))
            .ShouldBe("cut 12 1/2 in by 3 5/16 in");
}
