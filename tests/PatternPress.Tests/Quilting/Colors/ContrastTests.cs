using NUnit.Framework;
using PatternPress.Quilting.Colors;
using PatternPress.Quilting.Model;
using Shouldly;

namespace PatternPress.Tests.Quilting.Colors;

public class ContrastTests
{
    // 21, 4.54: published check values of WCAG contrast (the last one as printed by many guides). The others are
    // derived from the formula of W3C Technique G18.
    [TestCase("#000000", "#ffffff", 21.0, 0)]
    [TestCase("#767676", "#ffffff", 4.54222, 0.000005)]
    [TestCase("#777777", "#ffffff", 4.47809, 0.000005)]
    [TestCase("#ff0000", "#ffffff", 3.99848, 0.000005)]
    [TestCase("#0000ff", "#ffffff", 8.59247, 0.000005)]
    [TestCase("#00ff00", "#ffffff", 1.37219, 0.000005)]
    [TestCase("#595959", "#ffffff", 7.00473, 0.000005)]
    [TestCase("#949494", "#ffffff", 3.03347, 0.000005)]
    [TestCase("#959595", "#ffffff", 2.99535, 0.000005)]
    public void Contrast_ratio(string first, string second, double expected, double within)
    {
        Contrast.Ratio(Parse(first), Parse(second)).ShouldBe(expected, within + 1e-12);
        Contrast.Ratio(Parse(second), Parse(first)).ShouldBe(expected, within + 1e-12);
    }

    [Test]
    public void Text_reads_on_every_color()
    {
        for (int red = 0; red < 256; red += 15)
        {
            for (int green = 0; green < 256; green += 15)
            {
                for (int blue = 0; blue < 256; blue += 15)
                {
                    var color = new Color((byte)red, (byte)green, (byte)blue);
                    Contrast
                        .Ratio(color, Contrast.TextOn(color))
                        .ShouldBeGreaterThanOrEqualTo(Contrast.Text);
                }
            }
        }
    }

    [TestCase("#15233b", "#ffffff")]
    [TestCase("#f2a71b", "#000000")]
    public void Text_is_white_on_dark_and_black_on_light(string color, string expected) =>
        Contrast.TextOn(Parse(color)).ShouldBe(Parse(expected));

    private static Color Parse(string text) =>
        Color.TryParse(text, out Color color) ? color : throw new ArgumentException(text);
}
