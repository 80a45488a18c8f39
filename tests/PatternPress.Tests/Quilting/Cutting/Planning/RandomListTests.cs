using NUnit.Framework;
using PatternPress.Quilting.Cutting.Planning;
using Shouldly;

namespace PatternPress.Tests.Quilting.Cutting.Planning;

public class RandomListTests
{
    private static StripPlan Plan(CutProblem problem, CutStyle style, SearchEffort effort)
    {
        var plan = StripPlanner
            .Plan(problem, style, effort)
            .ShouldBeOfType<CutResult.Planned>()
            .Plan;
        plan.ShouldHold(problem);
        problem.EasyBound.ShouldBeLessThanOrEqualTo(plan.Total);
        return plan;
    }

    /// <summary>CP-SAT solves another model of the same lists, small enough to be proved quickly; the few that it cannot
    /// settle say nothing.</summary>
    [TestCase(CutStyle.Thrifty, 200)]
    [TestCase(CutStyle.Plain, 100)]
    public void Plans_are_as_short_as_the_reference(CutStyle style, int lists)
    {
        var settled = 0;
        for (var seed = 0; seed < lists; seed++)
        {
            var problem = RandomCuttingList.Small(seed);
            var plan = Plan(problem, style, SearchEffort.Usual);
            plan.Proved.ShouldBeTrue($"seed {seed}");
            if (FlowReference.Solve(problem, style, plan.Total, effort: 0.3) is not { } optimum)
                continue;
            optimum.ShouldBe(plan.Total, $"seed {seed}");
            settled++;
        }
        settled.ShouldBeGreaterThan(lists * 9 / 10);
    }

    [Test]
    public void Quilts_lists_are_planned_soundly([Values] CutStyle style)
    {
        for (var seed = 0; seed < 150; seed++)
        {
            var plan = Plan(RandomCuttingList.Quilt(seed), style, SearchEffort.Brief);
            plan.Gap.ShouldBeLessThanOrEqualTo(plan.Total / 50, $"seed {seed}");
        }
    }

    [Test]
    public void Thrifty_is_never_longer_than_plain_and_any_size_of_list_is_planned()
    {
        for (var seed = 0; seed < 100; seed++)
        {
            var problem = RandomCuttingList.Wild(seed);
            var plain = Plan(problem, CutStyle.Plain, new(5_000_000));
            var thrifty = Plan(problem, CutStyle.Thrifty, new(5_000_000));
            thrifty.LowerBound.ShouldBeLessThanOrEqualTo(plain.Total, $"seed {seed}");
            if (thrifty.Proved)
                thrifty.Total.ShouldBeLessThanOrEqualTo(plain.Total, $"seed {seed}");
        }
    }

    [Test]
    public void The_same_list_gets_the_same_plan_and_its_order_does_not_matter_to_the_total()
    {
        for (var seed = 0; seed < 40; seed++)
        {
            var problem = RandomCuttingList.Quilt(seed);
            var plan = Plan(problem, CutStyle.Thrifty, new(5_000_000));
            var again = Plan(problem, CutStyle.Thrifty, new(5_000_000));
            Text(again).ShouldBe(Text(plan), $"seed {seed}");
            var turned = Plan(
                problem with
                {
                    Pieces = [.. problem.Pieces.Reverse()],
                },
                CutStyle.Thrifty,
                new(5_000_000)
            );
            turned.Total.ShouldBe(plan.Total, $"seed {seed}");
        }
    }

    private static string Text(StripPlan plan) =>
        string.Join(
            '\n',
            plan.Strips.Select(strip =>
                $"{strip.Copies} x {strip.Height}: {string.Join(", ", strip.Segments)}"
            )
        );
}
