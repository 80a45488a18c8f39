using CsCheck;
using NUnit.Framework;
using PatternPress.Quilting.Geometry;
using Shouldly;

namespace PatternPress.Tests.Quilting.Shapes;

/// <summary>W3C, Scalable Vector Graphics 2, chapter "Paths" (grammar and commands recalled from memory, not from a stored copy).</summary>
public class PathDataTests
{
    private static PathData Read(string text)
    {
        PathData
            .TryParse(text, out PathData path, out int at, out string wanted)
            .ShouldBeTrue($"at {at}: {wanted}");
        return path;
    }

    private static double Area(string text) => Read(text).Parts.Sum(part => part.Area);

    // The same square of 10 by ten ways of writing.
    [TestCase("M0 0L10 0L10 10L0 10Z")]
    [TestCase("M 0,0 10,0 10,10 0,10 z")]
    [TestCase("m0 0 10 0 0 10 -10 0z")]
    [TestCase("M0 0H10V10H0Z")]
    [TestCase("m0,0h10v10h-10z")]
    [TestCase("M0-0L10,0 10,1e1,0,10z")]
    [TestCase(" \t\r\nM0 0l10,0\n0,10\n-10,0 ")]
    [TestCase("M+0.0.0L10 .0 10 10 0 +10Z")]
    [TestCase("M0 0L10 0C10 0 10 10 10 10S0 10 0 10Z")]
    public void Commands_may_be_written_in_many_ways(string path) => Area(path).ShouldBe(100, 1e-9);

    // Numbers run together: a second point or a sign begins the next one; flags of an arc need nothing between them.
    [TestCase("M.5.5l1-1-1-1-1 1z", 2)]
    [TestCase("M0 0a5 5 0 0110 0z", 39.26990816987241)]
    [TestCase("M0 0a5 5 0 0 1 10 0 5 5 0 01-10 0z", 78.53981633974483)]
    [TestCase("M0 0a5,5,0,1,0,10,0z", 39.26990816987241)]
    // Radii too small are grown until the ends fit: half a circle of radius 5.
    [TestCase("M0 0a1 1 0 0 1 10 0z", 39.26990816987241)]
    // An ellipse 4 × 2, turned or not.
    [TestCase("M-4 0A4 2 0 1 1 4 0A4 2 0 1 1 -4 0Z", 25.132741228718345)]
    [TestCase("M0 -4A4 2 90 1 1 0 4A4 2 90 1 1 0 -4Z", 25.132741228718345)]
    // A parabola's segment: two thirds of base times height (Archimedes).
    [TestCase("M0 0Q5 10 10 0Z", 33.333333333333336)]
    [TestCase("M0 0q5 10 10 0t10 0z", 0)]
    public void Curves_enclose_what_they_should(string path, double area) =>
        Math.Abs(Area(path)).ShouldBe(area, area * 1e-3 + 1e-9);

    [TestCase("M0 0 10 0z m20 20 5 5 -5 5z", 2)]
    [TestCase("M0 0L1 0 1 1zL0 5 5 5z", 1)]
    public void Closing_goes_back_to_the_start(string path, int parts) =>
        Read(path).Parts.Length.ShouldBe(parts);

    [TestCase("", 0, "a path begins with M")]
    [TestCase("L0 0", 0, "a path begins with M")]
    [TestCase("M0 0X", 4, "one of the letters M Z L H V C S Q T A, large or small")]
    [TestCase("M0 0L", 5, "a number")]
    [TestCase("M0 0L1 2,", 9, "a number")]
    [TestCase("M0 0C1 2 3 4 5", 14, "a number")]
    [TestCase("M0 0A1 1 0 2 0 5 5", 11, "0 or 1")]
    [TestCase("M0 0L1..2 3", 11, "a number")]
    [TestCase("M0 0L1e9 3", 5, "a number")]
    public void What_is_wrong_is_told_by_its_place(string path, int at, string wanted)
    {
        PathData.TryParse(path, out _, out int where, out string problem).ShouldBeFalse();
        (where, problem).ShouldBe((at, wanted));
    }

    [Test]
    public void Any_text_is_read_or_refused() =>
        Gen.String[Gen.Char["MmZzLlHhVvCcSsQqTtAa0123456789.,+-eE \n"], 0, 40]
            .Sample(text => PathData.TryParse(text, out _, out int at, out _) || at <= text.Length);

    // A line, raised to a cubic, encloses the same; the area of any outline does not change when it is moved.
    [Test]
    public void Areas_do_not_depend_on_where_the_outline_lies() =>
        Gen.Select(Gen.Int[-50, 50], Gen.Int[-50, 50])
            .Sample(
                (x, y) =>
                    Area($"M{x} {y}c1 4 8 -2 9 6q-3 5 -9 -6z")
                        .ShouldBe(Area("M0 0c1 4 8 -2 9 6q-3 5 -9 -6z"), 1e-6)
            );
}
