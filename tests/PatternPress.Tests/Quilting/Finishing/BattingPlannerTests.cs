using PatternPress.Quilting.Finishing;
using PatternPress.Quilting.Measures;
using PatternPress.Tests.Quilting.Cutting;

namespace PatternPress.Tests.Quilting.Finishing;

public sealed class BattingPlannerTests
{
    // Honey Be Good 2012-05-01; embroiderypress.com quilt-size-101; primitivequiltsandprojects.com: packaged sizes.
    [TestCase("crib", 45, 60)]
    [TestCase("twin", 72, 90)]
    [TestCase("full", 81, 96)]
    [TestCase("queen", 90, 108)]
    [TestCase("king", 120, 120)]
    public void Published_packages(string name, long width, long height)
    {
        BattingPackage package = BattingPlanner
            .Smallest(Length.FromInches(width), Length.FromInches(height))
            .ShouldNotBeNull();
        package.Name.ShouldBe(name);
        package.Width.ShouldBe(Length.FromInches(width));
        package.Height.ShouldBe(Length.FromInches(height));
        BattingPlanner
            .Smallest(Length.FromInches(height), Length.FromInches(width))
            .ShouldBe(package);
    }

    [Test]
    public void The_quilt_and_its_overhang_must_fit()
    {
        BattingPlan crib = Makings.Top("37", "52").Batting.ShouldNotBeNull();
        crib.Package!.Name.ShouldBe("crib");
        BattingPlan more = Makings.Top("37 1/8", "52").Batting.ShouldNotBeNull();
        more.Package!.Name.ShouldBe("twin");
    }

    [Test]
    public void None_holds_the_largest_quilts() =>
        Makings.Top("113", "100").Batting.ShouldNotBeNull().Package.ShouldBeNull();

    [Test]
    public void A_quilt_may_do_without() =>
        Makings.Top("40", "50", quilt: "batting: no").Batting.ShouldBeNull();
}
