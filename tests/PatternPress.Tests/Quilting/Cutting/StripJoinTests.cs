using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Tests.Quilting.Techniques;

namespace PatternPress.Tests.Quilting.Cutting;

public sealed class StripJoinTests
{
    // Always in Stitches (Ohio), 2009-08-03: quilt 40 × 50, 180 / 40 = 4.5 -> 5 strips.
    [TestCase("180", "40", 5)]
    // Castilleja Cotton, 2013-06: quilt 50 × 60, 220 / (40 - 2) = 5.79 -> 6 strips.
    [TestCase("220", "38", 6)]
    // Quilts by Jen (Canada): quilt 63 1/2 × 42 3/4, 212.5 / 40 = 5.31 -> 6 strips.
    [TestCase("212 1/2", "40", 6)]
    // quiltingboard thread t189575: quilt 96 × 110, 412 + 12 = 424, / 40 = 10.6 -> 11 strips.
    [TestCase("424", "40", 11)]
    // The same reckoning, Quick Tips Sewing 2011-11: perimeter + 24, / 40, rounded up; quilt 60 × 80 (derived).
    [TestCase("304", "40", 8)]
    public void Published_counts_that_leave_the_joins_to_the_extra(
        string total,
        string strip,
        long strips
    ) =>
        StripJoin
            .StripsFor(Written.Inches(total), Written.Inches(strip), Length.Zero)
            .ShouldBe(strips);

    [Test]
    public void A_straight_join_takes_two_seams_a_diagonal_one_the_width()
    {
        Length width = Written.Inches("2 1/2"),
            seam = Written.Inches("1/4");
        StripJoin.Loss(JoinStyle.Straight, width, seam).ShouldBe(Written.Inches("1/2"));
        StripJoin.Loss(JoinStyle.Diagonal, width, seam).ShouldBe(width);
    }

    [TestCase("40", "1/2", 1)]
    [TestCase("40 1/8", "1/2", 2)]
    [TestCase("79 1/2", "1/2", 2)]
    [TestCase("79 5/8", "1/2", 3)]
    [TestCase("0", "1/2", 0)]
    [TestCase("40", "40", 1)]
    public void The_least_number_that_reaches(string total, string loss, long strips) =>
        StripJoin
            .StripsFor(Written.Inches(total), Length.FromInches(40), Written.Inches(loss))
            .ShouldBe(strips);

    [Test]
    public void Where_a_join_takes_all_that_a_strip_adds_there_is_no_number() =>
        StripJoin
            .StripsFor(Length.FromInches(41), Length.FromInches(40), Length.FromInches(40))
            .ShouldBeNull();
}
