using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Finishing;
using PatternPress.Quilting.Measures;
using PatternPress.Tests.Quilting.Cutting;
using PatternPress.Tests.Quilting.Techniques;

namespace PatternPress.Tests.Quilting.Finishing;

public sealed class BindingPlannerTests
{
    // Strip counts as published; with the joins reckoned exactly and nothing extra they stay the same.
    // Always in Stitches (Ohio) 2009-08-03; Castilleja Cotton 2013-06; Quilts by Jen (Canada).
    [TestCase("40", "50", 5)]
    [TestCase("50", "60", 6)]
    [TestCase("63 1/2", "42 3/4", 6)]
    public void Published_strip_counts(string width, string height, long strips) =>
        Bind(width, height, "binding-extra: 0").Strips.ShouldBe(strips);

    // quiltingboard thread t189575: 96 × 110, 424 / 40 = 10.6 -> 11 strips. Eleven strips lose ten joins of 2 1/2 in and
    // reach 415 in, which leaves 3 in for the corners; the house's rule cuts one more.
    [Test]
    public void A_published_count_that_is_one_strip_short()
    {
        BindingPlan plan = Bind("96", "110");
        plan.Needed.ShouldBe(Length.FromInches(424));
        plan.Strips.ShouldBe(12);
        ((plan.StripLength * 11) - (plan.JoinLoss * 10)).ShouldBe(Length.FromInches(415));
    }

    // generations-quilt-patterns.com/bias-binding.html: 60 + 80 + 60 + 80 + 12 = 292 in.
    [Test]
    public void Length_of_binding() => Bind("60", "80").Needed.ShouldBe(Length.FromInches(292));

    // teacherscollegesj.org slides "Can You Figure the Amount of Yardage": perimeters.
    [TestCase("70", "86", 312)]
    [TestCase("63", "87", 300)]
    public void Published_perimeters(string width, string height, long perimeter) =>
        Bind(width, height).Perimeter.ShouldBe(Length.FromInches(perimeter));

    // Always in Stitches (Ohio): 5 strips × 2 1/2 = 12 1/2 in of fabric.
    [Test]
    public void Strips_times_width_is_the_fabric()
    {
        SizeMaking size = Makings.Top("40", "50", "binding-extra: 0");
        FabricPlan plan = size.Fabric("B", FabricUse.Binding).ShouldNotBeNull();
        plan.StripsLength.ShouldBe(Written.Inches("12 1/2"));
        plan.Yardage.Exactly.ShouldBe(Written.Inches("14 1/2"));
        size.Cuts.Single(cut => cut.Purpose is CutPurpose.Binding).Count.ShouldBe(5);
    }

    [Test]
    public void Binding_that_is_not_bought_apart_is_part_of_its_fabric()
    {
        SizeMaking size = Makings.Top("40", "50", "binding-apart: no");
        size.Fabric("B", FabricUse.Binding).ShouldBeNull();
        size.Fabric("B").ShouldNotBeNull();
    }

    [Test]
    public void The_joined_strips_reach_and_one_fewer_would_not()
    {
        for (int width = 10; width <= 120; width += 7)
        {
            BindingPlan plan = Bind($"{width}", "61");
            plan.Available.ShouldBeGreaterThanOrEqualTo(plan.Needed);
            (plan.Available - plan.StripLength + plan.JoinLoss).ShouldBeLessThan(plan.Needed);
        }
    }

    private static BindingPlan Bind(string width, string height, string house = "") =>
        Makings.Top(width, height, house).Binding.ShouldNotBeNull();
}
