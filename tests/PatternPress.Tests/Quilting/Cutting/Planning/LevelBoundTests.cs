using PatternPress.Quilting.Cutting.Planning;

namespace PatternPress.Tests.Quilting.Cutting.Planning;

public sealed class LevelBoundTests
{
    [Test]
    public void Equal_pieces_are_counted_by_how_many_fit_side_by_side()
    {
        // Five of 7 in fit into 40 in: 23 of them take 5 strips, where what they cover would fill little more than 4.
        var problem = new CutProblem(40, [new CutPiece(0, 7, 7, 23, Turnable: true)]);
        LevelBound.Of(problem).ShouldBe(5 * 7);
    }

    [Test]
    public void Pieces_wider_than_half_the_fabric_take_a_strip_each()
    {
        // 3 tall ones of 21 wide, and 4 low ones of 21: 3 × 10 + 4 × 2.
        var problem = new CutProblem(
            40,
            [
                new CutPiece(0, 21, 10, 3, Turnable: false),
                new CutPiece(1, 21, 2, 4, Turnable: false),
            ]
        );
        LevelBound.Of(problem).ShouldBe(38);
    }

    [Test]
    public void A_piece_too_long_to_lie_across_stands_upright()
    {
        // Two of 11 fit side by side into 24; each is 30 high.
        var problem = new CutProblem(24, [new CutPiece(0, 30, 11, 5, Turnable: true)]);
        LevelBound.Of(problem).ShouldBe(3 * 30);
    }

    [Test]
    public void No_plan_is_shorter([Values] CutStyle style)
    {
        int tight = 0;
        for (int seed = 0; seed < 300; seed++)
        {
            CutProblem problem = RandomCuttingList.Small(seed);
            StripPlan plan = StripPlanner
                .Plan(problem, style, SearchEffort.Brief)
                .ShouldBeOfType<CutResult.Planned>()
                .Plan;
            long bound = LevelBound.Of(problem);
            bound.ShouldBeLessThanOrEqualTo(plan.Total, $"seed {seed}");
            tight += bound == plan.Total ? 1 : 0;
        }
        tight.ShouldBeGreaterThan(30);
    }
}
