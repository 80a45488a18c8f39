using NUnit.Framework;
using PatternPress.Quilting.Cutting.Planning;
using Shouldly;

namespace PatternPress.Tests.Quilting.Cutting.Planning;

public class PanelPlannerTests
{
    private static PanelPlan Plan(PanelProblem problem) => Plan(problem, SearchEffort.Brief);

    private static PanelPlan Plan(PanelProblem problem, SearchEffort effort)
    {
        var plan = PanelPlanner.Plan(problem, effort).ShouldBeOfType<PanelResult.Planned>().Plan;
        PanelPlanCheck.Find(plan, problem).ShouldBeNull();
        return plan;
    }

    /// <summary>Squares from one fat quarter of 18 × 22 in: Quilter's Cache, "Math Charts", 2002
    /// (quilterscache.com/M/MathChartsPage.html).</summary>
    [TestCase(16, 99)]
    [TestCase(20, 56)]
    [TestCase(23, 42)]
    [TestCase(24, 42)]
    [TestCase(28, 30)]
    [TestCase(31, 20)]
    [TestCase(32, 20)]
    [TestCase(36, 16)]
    [TestCase(39, 12)]
    [TestCase(40, 12)]
    [TestCase(44, 12)]
    [TestCase(47, 9)]
    [TestCase(48, 9)]
    [TestCase(52, 6)]
    [TestCase(55, 6)]
    public void Squares_from_a_fat_quarter(int eighths, int most)
    {
        Panels(most).ShouldBe(1);
        Panels(most + 1).ShouldBe(2);

        long Panels(int count)
        {
            var plan = Plan(new(8 * 22, 8 * 18, [new(1, eighths, eighths, count, true)]));
            plan.Proved.ShouldBeTrue();
            return plan.Panels;
        }
    }

    [Test]
    public void Plans_take_as_few_panels_as_trying_everything_does()
    {
        var proved = 0;
        for (var seed = 0; seed < 400; seed++)
        {
            var problem = RandomPanelList.Few(seed);
            var plan = Plan(problem);
            var fewest = PanelReference.Solve(problem);
            plan.LowerBound.ShouldBeLessThanOrEqualTo(fewest, $"seed {seed}");
            plan.Panels.ShouldBe(fewest, $"seed {seed}");
            proved += plan.Proved ? 1 : 0;
        }
        TestContext.Out.WriteLine($"{proved} of 400 proved");
        proved.ShouldBeGreaterThan(390);
    }

    [Test]
    public void Quilts_lists_are_planned_soundly_and_nearly_always_proved()
    {
        var (lists, proved) = (0, 0);
        for (var seed = 0; seed < 100; seed++)
        {
            var problem = RandomPanelList.Quilt(seed);
            if (problem.Pieces.IsEmpty)
                continue;
            lists++;
            var plan = Plan(problem);
            proved += plan.Proved ? 1 : 0;
            (plan.Panels - plan.LowerBound).ShouldBeLessThanOrEqualTo(
                Math.Max(1, plan.Panels / 50),
                $"seed {seed}"
            );
        }
        TestContext.Out.WriteLine($"{proved} of {lists} proved");
        proved.ShouldBeGreaterThan(lists * 9 / 10);
    }

    [Test]
    public void The_same_list_gets_the_same_plan()
    {
        for (var seed = 0; seed < 20; seed++)
        {
            var problem = RandomPanelList.Quilt(seed);
            Text(Plan(problem)).ShouldBe(Text(Plan(problem)), $"seed {seed}");
        }

        static string Text(PanelPlan plan) =>
            string.Join(
                '\n',
                plan.Layouts.Select(layout =>
                    $"{layout.Copies} {layout.Up}: "
                    + string.Join(
                        "; ",
                        layout.Strips.Select(strip =>
                            $"{strip.Copies} x {strip.Height}: {string.Join(", ", strip.Segments)}"
                        )
                    )
                )
            );
    }

    [Test]
    public void Strips_run_up_the_panel_where_that_takes_fewer()
    {
        // Three strips of 6 in from 18 in across; of the 21 in along, three of 6 1/2.
        var plan = Plan(new(42, 36, [new(1, 36, 14, 3, true)]));
        plan.Panels.ShouldBe(1);
        plan.Layouts[0].Up.ShouldBeTrue();
    }

    [Test]
    public void A_directional_print_keeps_its_direction_whichever_way_the_strips_run()
    {
        // 21 × 18 in: of pieces 10 in wide and 17 in high two stand side by side; turned they would too.
        var plan = Plan(new(42, 36, [new(1, 20, 34, 2, false)]));
        plan.Panels.ShouldBe(1);
        Plan(new(42, 36, [new(1, 34, 20, 2, false)])).Panels.ShouldBe(2);
    }

    [Test]
    public void A_piece_larger_than_the_panel_is_a_fault()
    {
        var faults = PanelPlanner
            .Plan(new(42, 36, [new(1, 38, 40, 1, true), new(2, 3, 37, 1, false)]))
            .ShouldBeOfType<PanelResult.Refused>()
            .Faults;
        faults
            .Select(fault => (fault.Reason, fault.PieceId))
            .ShouldBe([(CutFaultReason.LargerThanStock, 1), (CutFaultReason.LargerThanStock, 2)]);
    }

    [Test]
    public void Bad_lists_are_refused()
    {
        Reason(new(0, 36, [])).ShouldBe(CutFaultReason.StockNotPositive);
        Reason(new(42, 36, [new(1, 0, 5, 1, true)])).ShouldBe(CutFaultReason.SizeNotPositive);
        Reason(new(42, 36, [new(1, 5, 5, 1_000_000_000, true)]))
            .ShouldBe(CutFaultReason.CountBeyondLimit);

        static CutFaultReason Reason(PanelProblem problem) =>
            PanelPlanner.Plan(problem).ShouldBeOfType<PanelResult.Refused>().Faults[0].Reason;
    }

    [Test]
    public void Very_many_pieces_are_planned()
    {
        var plan = Plan(new(40, 40, [new(1, 20, 20, 400, true), new(2, 13, 7, 1_000, true)]));
        plan.Proved.ShouldBeTrue();
    }
}
