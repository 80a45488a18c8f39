using NUnit.Framework;
using PatternPress.Quilting.Cutting.Planning;
using Shouldly;

namespace PatternPress.Tests.Quilting.Cutting.Planning;

/// <summary>The check that all others lean on must itself be able to fail: a right plan is spoilt in one place at a time.
/// </summary>
public class StripPlanCheckTests
{
    private static readonly CutProblem Problem = new(
        320,
        [new(1, 36, 36, 9, false), new(2, 20, 20, 3, false), new(3, 40, 28, 5, true)]
    );

    private static StripPlan Right(CutStyle style) =>
        StripPlanner.Plan(Problem, style).ShouldBeOfType<CutResult.Planned>().Plan;

    [Test]
    public void A_right_plan_passes([Values] CutStyle style) =>
        StripPlanCheck.Find(Right(style), Problem).ShouldBeNull();

    [Test]
    public void Every_spoilt_strip_is_found()
    {
        var plan = Right(CutStyle.Thrifty);
        for (var i = 0; i < plan.Strips.Length; i++)
        {
            var strip = plan.Strips[i];
            Spoilt(strip with { Height = strip.Height - 1 });
            Spoilt(strip with { Copies = strip.Copies + 1 });
            Spoilt(strip with { Segments = [] });
            for (var j = 0; j < strip.Segments.Length; j++)
            {
                var segment = strip.Segments[j];
                SpoiltSegment(segment with { Count = segment.Count + 1 });
                SpoiltSegment(segment with { Count = segment.Count - 1 });
                SpoiltSegment(segment with { Width = segment.Width - 1 });
                SpoiltSegment(segment with { Height = segment.Height - 1 });
                SpoiltSegment(segment with { PieceId = 99 });
                if (segment.Width != segment.Height)
                    SpoiltSegment(segment with { Turned = !segment.Turned });

                void SpoiltSegment(StripSegment by) =>
                    Spoilt(strip with { Segments = strip.Segments.SetItem(j, by) });
            }

            void Spoilt(Strip by) =>
                StripPlanCheck
                    .Find(plan with { Strips = plan.Strips.SetItem(i, by) }, Problem)
                    .ShouldNotBeNull(by.ToString());
        }
    }

    [Test]
    public void A_strip_longer_than_the_fabric_is_wide_is_found()
    {
        var narrow = Problem with { Width = 300 };
        var plan = Right(CutStyle.Thrifty) with { Width = 300 };
        StripPlanCheck.Find(plan, narrow).ShouldNotBeNull();
    }

    [Test]
    public void Two_mixed_strips_of_one_height_are_not_plain()
    {
        var problem = new CutProblem(100, [new(1, 60, 30, 2, false), new(2, 40, 20, 2, false)]);
        Strip mixed = new(30, 2, [new(1, 1, false, 60, 30), new(2, 1, false, 40, 20)]);
        StripPlanCheck.Find(new(CutStyle.Thrifty, 100, [mixed], 60, 0), problem).ShouldBeNull();
        StripPlanCheck.Find(new(CutStyle.Plain, 100, [mixed], 60, 0), problem).ShouldNotBeNull();
    }

    [Test]
    public void A_strip_taller_than_its_pieces_is_found()
    {
        var problem = new CutProblem(100, [new(1, 60, 30, 1, false), new(2, 40, 20, 1, false)]);
        Strip tall = new(30, 1, [new(1, 1, false, 60, 30)]);
        Strip wasteful = new(30, 1, [new(2, 1, false, 40, 20)]);
        StripPlanCheck
            .Find(new(CutStyle.Thrifty, 100, [tall, wasteful], 30, 0), problem)
            .ShouldNotBeNull();
    }

    [Test]
    public void A_bound_above_the_plan_is_found()
    {
        var plan = Right(CutStyle.Thrifty);
        StripPlanCheck.Find(plan with { LowerBound = plan.Total + 1 }, Problem).ShouldNotBeNull();
    }
}
