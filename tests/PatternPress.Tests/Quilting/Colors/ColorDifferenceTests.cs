using NUnit.Framework;
using PatternPress.Quilting.Colors;
using PatternPress.Quilting.Model;
using Shouldly;

namespace PatternPress.Tests.Quilting.Colors;

public class ColorDifferenceTests
{
    // The 34 test pairs of Sharma, Wu, Dalal, "The CIEDE2000 Color-Difference Formula", Color Res. Appl. 30(1), 21-30
    // (2005), DOI 10.1002/col.20070, table 1.
    [TestCase(50.0000, 2.6772, -79.7751, 50.0000, 0.0000, -82.7485, 2.0425)]
    [TestCase(50.0000, 3.1571, -77.2803, 50.0000, 0.0000, -82.7485, 2.8615)]
    [TestCase(50.0000, 2.8361, -74.0200, 50.0000, 0.0000, -82.7485, 3.4412)]
    [TestCase(50.0000, -1.3802, -84.2814, 50.0000, 0.0000, -82.7485, 1.0000)]
    [TestCase(50.0000, -1.1848, -84.8006, 50.0000, 0.0000, -82.7485, 1.0000)]
    [TestCase(50.0000, -0.9009, -85.5211, 50.0000, 0.0000, -82.7485, 1.0000)]
    [TestCase(50.0000, 0.0000, 0.0000, 50.0000, -1.0000, 2.0000, 2.3669)]
    [TestCase(50.0000, -1.0000, 2.0000, 50.0000, 0.0000, 0.0000, 2.3669)]
    [TestCase(50.0000, 2.4900, -0.0010, 50.0000, -2.4900, 0.0009, 7.1792)]
    [TestCase(50.0000, 2.4900, -0.0010, 50.0000, -2.4900, 0.0010, 7.1792)]
    [TestCase(50.0000, 2.4900, -0.0010, 50.0000, -2.4900, 0.0011, 7.2195)]
    [TestCase(50.0000, 2.4900, -0.0010, 50.0000, -2.4900, 0.0012, 7.2195)]
    [TestCase(50.0000, -0.0010, 2.4900, 50.0000, 0.0009, -2.4900, 4.8045)]
    [TestCase(50.0000, -0.0010, 2.4900, 50.0000, 0.0010, -2.4900, 4.8045)]
    [TestCase(50.0000, -0.0010, 2.4900, 50.0000, 0.0011, -2.4900, 4.7461)]
    [TestCase(50.0000, 2.5000, 0.0000, 50.0000, 0.0000, -2.5000, 4.3065)]
    [TestCase(50.0000, 2.5000, 0.0000, 73.0000, 25.0000, -18.0000, 27.1492)]
    [TestCase(50.0000, 2.5000, 0.0000, 61.0000, -5.0000, 29.0000, 22.8977)]
    [TestCase(50.0000, 2.5000, 0.0000, 56.0000, -27.0000, -3.0000, 31.9030)]
    [TestCase(50.0000, 2.5000, 0.0000, 58.0000, 24.0000, 15.0000, 19.4535)]
    [TestCase(50.0000, 2.5000, 0.0000, 50.0000, 3.1736, 0.5854, 1.0000)]
    [TestCase(50.0000, 2.5000, 0.0000, 50.0000, 3.2972, 0.0000, 1.0000)]
    [TestCase(50.0000, 2.5000, 0.0000, 50.0000, 1.8634, 0.5757, 1.0000)]
    [TestCase(50.0000, 2.5000, 0.0000, 50.0000, 3.2592, 0.3350, 1.0000)]
    [TestCase(60.2574, -34.0099, 36.2677, 60.4626, -34.1751, 39.4387, 1.2644)]
    [TestCase(63.0109, -31.0961, -5.8663, 62.8187, -29.7946, -4.0864, 1.2630)]
    [TestCase(61.2901, 3.7196, -5.3901, 61.4292, 2.2480, -4.9620, 1.8731)]
    [TestCase(35.0831, -44.1164, 3.7933, 35.0232, -40.0716, 1.5901, 1.8645)]
    [TestCase(22.7233, 20.0904, -46.6940, 23.0331, 14.9730, -42.5619, 2.0373)]
    [TestCase(36.4612, 47.8580, 18.3852, 36.2715, 50.5065, 21.2231, 1.4146)]
    [TestCase(90.8027, -2.0831, 1.4410, 91.1528, -1.6435, 0.0447, 1.4441)]
    [TestCase(90.9257, -0.5406, -0.9208, 88.6381, -0.8985, -0.7239, 1.5381)]
    [TestCase(6.7747, -0.2908, -2.4247, 5.8714, -0.0985, -2.2286, 0.6377)]
    [TestCase(2.0776, 0.0795, -1.1350, 0.9033, -0.0636, -0.5514, 0.9082)]
    public void Ciede2000_agrees_with_its_authors_test_pairs_both_ways_round(
        double l1,
        double a1,
        double b1,
        double l2,
        double a2,
        double b2,
        double expected
    )
    {
        var first = new Lab(l1, a1, b1);
        var second = new Lab(l2, a2, b2);
        ColorDifference.Between(first, second).ShouldBe(expected, 0.00005);
        ColorDifference.Between(second, first).ShouldBe(expected, 0.00005);
    }

    [Test]
    public void Equal_colors_do_not_differ() =>
        ColorDifference.Between(new Color(21, 35, 59), new Color(21, 35, 59)).ShouldBe(0);

    // Bruce Lindbloom's and the CIE's D65 value of the sRGB red primary, from memory: L* 53.24, a* 80.09, b* 67.20.
    [Test]
    public void Lab_of_the_red_primary() => ShouldBeNear(new Color(255, 0, 0), 53.24, 80.09, 67.20);

    // From memory: L* 32.30, a* 79.19, b* -107.86.
    [Test]
    public void Lab_of_the_blue_primary() =>
        ShouldBeNear(new Color(0, 0, 255), 32.30, 79.19, -107.86);

    [Test]
    public void Greys_have_no_color_and_white_is_100()
    {
        foreach (byte value in new byte[] { 0, 1, 10, 11, 128, 200, 255 })
        {
            Lab lab = Lab.From(new Color(value, value, value));
            lab.A.ShouldBe(0, 1e-9);
            lab.B.ShouldBe(0, 1e-9);
        }
        Lab.From(new Color(255, 255, 255)).L.ShouldBe(100, 1e-9);
        Lab.From(new Color(0, 0, 0)).L.ShouldBe(0, 1e-9);
    }

    [Test]
    public void Red_and_green_of_one_lightness_merge_in_grey()
    {
        // Both have a relative luminance of about 0.2126.
        Color red = new(255, 0, 0);
        Color green = new(0, 148, 0);
        ColorDifference.Between(red, green).ShouldBeGreaterThan(50);
        ColorDifference.InGrey(red, green).ShouldBeLessThan(1);
    }

    private static void ShouldBeNear(Color color, double l, double a, double b)
    {
        Lab lab = Lab.From(color);
        lab.L.ShouldBe(l, 0.05);
        lab.A.ShouldBe(a, 0.05);
        lab.B.ShouldBe(b, 0.05);
    }
}
