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

    /// <summary>Worked example at fedest.com (rag quilt): 45 in fabric, 20 squares of 10 in, 4 to a row, 5 rows, 50 in.
    /// </summary>
    [Test]
    public void Twenty_ten_inch_squares_take_fifty_inches() =>
        Planned(new(360, [new(1, 80, 80, 20, true)]), CutStyle.Plain).Total.ShouldBe(400);

    /// <summary>Quilter's Cache, "startquiltingtwo": 112 pieces of 3 7/8 by 7 3/4 in from 42 in fabric lie 5 to a strip (as
    /// published); 23 strips of 3 7/8 in follow from that, or fewer of 7 3/4 in where they may be turned.</summary>
    [Test]
    public void Turning_is_used_where_it_is_allowed()
    {
        var upright = Planned(new(336, [new(1, 62, 31, 112, false)]), CutStyle.Plain);
        upright.StripCount.ShouldBe(23);
        upright.Total.ShouldBe(23 * 31);
        // Ten lie side by side when turned: eleven strips of twice the height hold 110, one more low strip the rest.
        var turned = Planned(new(336, [new(1, 62, 31, 112, true)]), CutStyle.Thrifty);
        turned.Total.ShouldBe(11 * 62 + 31);
    }

    [Test]
    public void Plain_mixes_only_the_last_strip_of_a_height()
    {
        // Each tall piece leaves an end that a short one fits: thrifty uses all ends, plain only one.
        var problem = new CutProblem(100, [new(1, 60, 30, 4, false), new(2, 40, 20, 4, false)]);
        Planned(problem, CutStyle.Thrifty).Total.ShouldBe(120);
        Planned(problem, CutStyle.Plain).Total.ShouldBe(160);
    }

    [Test]
    public void Two_layouts_become_one_where_the_fabric_is_the_same()
    {
        // 3 and 2 pieces a strip, in whatever mixture, fill two strips; both can be cut alike.
        var problem = new CutProblem(100, [new(1, 20, 30, 6, false), new(2, 18, 30, 4, false)]);
        Planned(problem, CutStyle.Thrifty).Strips.ShouldHaveSingleItem().Copies.ShouldBe(2);
    }

    [Test]
    public void Kinds_of_one_size_keep_their_names_and_counts()
    {
        var problem = new CutProblem(
            320,
            [new(1, 20, 36, 7, true), new(2, 36, 20, 5, true), new(3, 20, 36, 4, false)]
        );
        Planned(problem, CutStyle.Thrifty).Proved.ShouldBeTrue();
    }

    [Test]
    public void Millions_of_pieces_are_planned()
    {
        var problem = new CutProblem(
            336,
            [
                new(1, 20, 20, CutLimits.Count, true),
                new(2, 33, 27, 9_999_999, true),
                new(3, 52, 41, 1_234_567, false),
            ]
        );
        var plan = Planned(problem, CutStyle.Thrifty);
        ((double)plan.Gap / plan.Total).ShouldBeLessThan(1e-6);
    }

    [Test]
    public void Widths_without_a_common_measure_get_a_plan_with_its_gap()
    {
        var problem = new CutProblem(
            99_999_999,
            [new(1, 9_999_991, 20, 30, true), new(2, 7_654_321, 33, 44, false)]
        );
        var plan = Planned(problem, CutStyle.Thrifty);
        plan.LowerBound.ShouldBeGreaterThan(0);
    }

    [Test]
    public void Remainders_are_used_before_fabric_and_not_beyond([Values] CutStyle style)
    {
        for (var seed = 0; seed < 60; seed++)
        {
            var problem = RandomCuttingList.Small(seed) with
            {
                Remainders = [new(40, 25), new(seed % 30, 60)],
            };
            var plan = Planned(problem, style);
            var without = Planned(problem with { Remainders = [] }, style);
            plan.Total.ShouldBeLessThanOrEqualTo(without.Total, $"seed {seed}");
            var pieces = problem.Pieces.Sum(piece => piece.Width * piece.Height * piece.Count);
            var remainders = problem.Remainders.Sum(rest => rest.Width * rest.Length);
            (plan.Total * problem.Width + remainders).ShouldBeGreaterThanOrEqualTo(pieces);
            plan.Proved.ShouldBeTrue($"seed {seed}");
        }
    }

    [Test]
    public void Nothing_to_cut_takes_no_fabric()
    {
        var plan = Planned(new(320, [new(1, 20, 20, 0, false)]), CutStyle.Plain);
        plan.Total.ShouldBe(0);
        plan.Proved.ShouldBeTrue();
    }

    private static StripPlan Planned(CutProblem problem, CutStyle style)
    {
        var plan = StripPlanner.Plan(problem, style).ShouldBeOfType<CutResult.Planned>().Plan;
        plan.ShouldHold(problem);
        return plan;
    }
}
