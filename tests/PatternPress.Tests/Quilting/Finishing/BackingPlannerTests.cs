using PatternPress.Quilting.Finishing;
using PatternPress.Quilting.Measures;
using PatternPress.Tests.Quilting.Cutting;
using PatternPress.Tests.Quilting.Techniques;

namespace PatternPress.Tests.Quilting.Finishing;

public sealed class BackingPlannerTests
{
    // lovelyfrankensteindesigns.blogspot.com 2011-10: 4 in on each side, 55 × 70 -> 63 × 78.
    [Test]
    public void Four_inches_on_every_side()
    {
        BackingPlan plan = Back("55", "70");
        plan.Width.ShouldBe(Length.FromInches(63));
        plan.Height.ShouldBe(Length.FromInches(78));
    }

    // quiltingboard 7400852: a backing of 65 × 78 takes 2 × 65 = 130 in, 3 5/8 yd, or 2 × 78 = 156 in, 4 1/3 yd.
    [Test]
    public void The_direction_that_takes_less()
    {
        BackingPlan plan = Back("57", "70");
        plan.Panels.ShouldBe(2);
        plan.Seams.ShouldBe(BackingSeams.Level);
        plan.PanelLength.ShouldBe(Length.FromInches(65));
        plan.Yardage.Exactly.ShouldBe(Length.FromInches(130));
        plan.Yardage.Yards.ShouldBe(new Rational(29, 8));
        plan.Derivation.Terms.ShouldContain(t =>
            t.Value.Equals(
                new PatternPress.Quilting.Cutting.Quantity.Measure(Length.FromInches(156))
            )
        );
        Yardage
            .RoundUp(Length.FromInches(156), Written.Inches("4 1/2"), thirds: true)
            .Yards.ShouldBe(new Rational(13, 3));
    }

    // quiltingboard t290638: a backing of 80 × 56 takes 2 × 56 = 112 in = 3.11 yd, up to the next 1/8.
    [Test]
    public void Two_panels_down()
    {
        BackingPlan plan = Back("72", "48", "backing-width: 42");
        plan.Seams.ShouldBe(BackingSeams.Upright);
        plan.Yardage.Exactly.ShouldBe(Length.FromInches(112));
        plan.Yardage.Yards.ShouldBe(new Rational(25, 8));
    }

    // Park Bench Quilt Shop FAQ: 72 × 90 takes 5 1/2 yd of backing (2 panels of 98 in).
    [Test]
    public void A_published_yardage()
    {
        BackingPlan plan = Back("72", "90", "backing-width: 42");
        plan.Panels.ShouldBe(2);
        plan.Yardage.Yards.ShouldBe(new Rational(11, 2));
    }

    // The same source: 9 yd for 90 × 108, a rounded figure that must hold what is needed.
    [Test]
    public void A_published_upper_bound() =>
        Back("90", "108", "backing-width: 42").Yardage.Yards.ShouldBeLessThanOrEqualTo(9);

    // teacherscollegesj.org: backing 103 × 110 from fabric 108 in wide: 110 in = 3.05 yd -> 3 1/8 yd.
    [Test]
    public void Wide_fabric_needs_no_seam()
    {
        BackingPlan plan = Back("95", "102", "backing-width: 108");
        plan.Panels.ShouldBe(1);
        plan.Seams.ShouldBe(BackingSeams.NoneDown);
        plan.Yardage.Yards.ShouldBe(new Rational(25, 8));
    }

    [Test]
    public void A_seam_takes_its_allowance_from_both_panels()
    {
        // 79 in across is what two panels of 40 in give with seams of 1/2 in; a hair more takes a third panel.
        Back("71", "100").Panels.ShouldBe(2);
        Back("71 1/8", "100").Panels.ShouldBe(3);
        Back("71 1/8", "100", "backing-seam: 3/8").Panels.ShouldBe(2);
    }

    [Test]
    public void The_width_named_for_the_backing_goes_before_the_fabrics_own()
    {
        const string Fabric = "Z: {name: Wide, color: \"#ffffff\", usable-width: 60}";
        Back("50", "60", quilt: "backing: Z", fabric: Fabric)
            .FabricWidth.ShouldBe(Length.FromInches(60));
        Back("50", "60", quilt: "backing: {fabric: Z, width: 108}", fabric: Fabric)
            .FabricWidth.ShouldBe(Length.FromInches(108));
        Back("50", "60").FabricWidth.ShouldBe(Length.FromInches(40));
    }

    private static BackingPlan Back(
        string width,
        string height,
        string house = "",
        string quilt = "",
        string fabric = ""
    ) =>
        // Published yardages are those of the panels alone.
        Makings
            .Top(width, height, $"squaring: 0, {house}", quilt, fabric)
            .Backing.ShouldNotBeNull();

    [Test]
    public void Straightening_and_shrinking_are_bought_too()
    {
        // Two panels of 90 in are 5 yd to the inch: with nothing for straightening the edge one comes out short.
        BackingPlan plan = Makings.Top("66", "82").Backing.ShouldNotBeNull();
        plan.Panels.ShouldBe(2);
        plan.PanelLength.ShouldBe(Length.FromInches(90));
        plan.Yardage.Exactly.ShouldBe(Length.FromInches(182));
        plan.Yardage.Yards.ShouldBe(new Rational(41, 8));
        plan.Derivation.Terms.ShouldContain(t => t.Name == "squaring");
        BackingPlan shrunk = Makings.Top("66", "82", "shrinkage: 4 %").Backing.ShouldNotBeNull();
        // 40 in shrink to 38.4, on the ruler 38 3/8: a width of 74 still takes two panels.
        shrunk.FabricWidth.ShouldBe(Length.FromInches(40));
        shrunk.PanelWidth.ShouldBe(Written.Inches("38 3/8"));
        shrunk.Panels.ShouldBe(2);
        shrunk.Yardage.Exactly.ShouldBe(Length.FromInches(182) / new Rational(96, 100));
    }
}
