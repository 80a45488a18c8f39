using NUnit.Framework;
using PatternPress.Quilting.Cutting.Planning;
using Shouldly;

namespace PatternPress.Tests.Quilting.Cutting.Planning;

public class PublishedOptimaTests
{
    /// <summary>The one instance whose last few units take longer than a test may; the benchmark spends more on it.
    /// </summary>
    private const string Hardest = "gcut4d turned";

    private static PublishedInstance[] Instances()
    {
        if (Repository.Shared is not { } shared)
            Assert.Ignore("The published instances lie in ../shared, which is not here.");
        return
        [
            .. PublishedInstance.ReadAll(Path.Combine(Repository.Shared!, "checks", "packing")),
        ];
    }

    [Test]
    public void Every_published_optimum_is_reached_and_proved()
    {
        foreach (var instance in Instances().Where(instance => instance.ToString() != Hardest))
        {
            var plan = Plan(instance, SearchEffort.Usual);
            plan.Total.ShouldBe(instance.Optimum, instance.ToString());
            plan.LowerBound.ShouldBe(instance.Optimum, instance.ToString());
        }
    }

    [Test]
    public void The_hardest_instance_is_planned_within_a_thousandth_and_says_so()
    {
        var instance = Instances().Single(instance => instance.ToString() == Hardest);
        var plan = Plan(instance, new SearchEffort(50_000_000));
        plan.Total.ShouldBeInRange(instance.Optimum, instance.Optimum + instance.Optimum / 1000);
        plan.LowerBound.ShouldBeInRange(
            instance.Optimum - instance.Optimum / 1000,
            instance.Optimum
        );
        plan.Gap.ShouldBe(plan.Total - plan.LowerBound);
    }

    private static StripPlan Plan(PublishedInstance instance, SearchEffort effort)
    {
        var plan = StripPlanner
            .Plan(instance.Problem, CutStyle.Thrifty, effort)
            .ShouldBeOfType<CutResult.Planned>()
            .Plan;
        plan.ShouldHold(instance.Problem);
        return plan;
    }
}
