using NUnit.Framework;
using PatternPress.Quilting.Cutting.Planning;
using Shouldly;

namespace PatternPress.Tests.Quilting.Cutting.Planning;

public class StripPlannerTests
{
    /// <summary>Worked yardage in featheredstar.wordpress.com's FAQ: 80 squares of 2 1/2 in from 40 in fabric lie 16 to a
    /// row in 5 rows, 12 1/2 in of fabric. In eighths.</summary>
    [TestCase(CutStyle.Plain)]
    [TestCase(CutStyle.Thrifty)]
    public void Eighty_squares_take_five_strips(CutStyle style)
    {
        var problem = new CutProblem(320, [new(7, 20, 20, 80, false)]);
        var plan = Planned(problem, style);
        plan.Total.ShouldBe(100);
        plan.Proved.ShouldBeTrue();
        plan.Strips.ShouldHaveSingleItem().Copies.ShouldBe(5);
    }

    [Test]
    public void The_end_of_the_last_strip_holds_shorter_pieces()
    {
        // 9 squares of 4 1/2 in fill one 40 in strip and begin a second; 3 squares of 2 1/2 in fit its end.
        var problem = new CutProblem(320, [new(1, 36, 36, 9, false), new(2, 20, 20, 3, false)]);
        var plan = Planned(problem, CutStyle.Plain);
        plan.Total.ShouldBe(72);
    }

    [Test]
    public void Faults_name_the_piece_and_the_numbers()
    {
        var problem = new CutProblem(
            320,
            [
                new(1, 321, 20, 1, false),
                new(2, 0, 20, 1, false),
                new(3, 20, 20, -1, false),
                new(4, 400, 350, 1, true),
                new(5, 20, 20, 2_000_000_000, false),
                new(5, 20, 20, 1, false),
                new(6, 400, 20, 1, true),
            ]
        );
        StripPlanner
            .Plan(problem, CutStyle.Plain)
            .ShouldBeOfType<CutResult.Refused>()
            .Faults.ShouldBe([
                new(CutFaultReason.LargerThanStock, 1, 321, 320),
                new(CutFaultReason.SizeNotPositive, 2, 0, 0),
                new(CutFaultReason.CountNegative, 3, -1, 0),
                new(CutFaultReason.LargerThanStock, 4, 350, 320),
                new(CutFaultReason.CountBeyondLimit, 5, 2_000_000_000, CutLimits.Count),
                new(CutFaultReason.IdRepeated, 5, 5, 1),
            ]);
    }

    private static StripPlan Planned(CutProblem problem, CutStyle style)
    {
        var plan = StripPlanner.Plan(problem, style).ShouldBeOfType<CutResult.Planned>().Plan;
        plan.ShouldHold(problem);
        return plan;
    }
}
