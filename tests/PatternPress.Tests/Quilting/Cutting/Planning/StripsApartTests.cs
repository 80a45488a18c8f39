using PatternPress.Quilting.Cutting.Planning;

namespace PatternPress.Tests.Quilting.Cutting.Planning;

public sealed class StripsApartTests
{
    private static string Told(IEnumerable<Strip> strips) =>
        string.Join(
            ", ",
            strips.Select(s => $"{s.Copies} of {s.Height}: {s.Segments.Single().Count}")
        );

    [Test]
    public void Strips_are_alike_where_pieces_come_out_even()
    {
        var problem = new CutProblem(40, [new CutPiece(0, 5, 4, 14, Turnable: false)]);
        Told(StripsApart.Flat(problem)).ShouldBe("2 of 4: 7");
    }

    [Test]
    public void Else_they_are_full_and_one_holds_the_rest()
    {
        var problem = new CutProblem(40, [new CutPiece(0, 5, 4, 19, Turnable: false)]);
        Told(StripsApart.Flat(problem)).ShouldBe("2 of 4: 8, 1 of 4: 3");
    }

    [Test]
    public void A_piece_longer_than_the_strip_stands_upright()
    {
        var problem = new CutProblem(40, [new CutPiece(0, 60, 6, 5, Turnable: true)]);
        Told(StripsApart.Flat(problem)).ShouldBe("1 of 60: 5");
    }

    [Test]
    public void Kinds_never_share_a_strip_and_none_is_missing()
    {
        for (int seed = 0; seed < 300; seed++)
        {
            CutProblem problem = RandomCuttingList.Small(seed);
            foreach (var strips in new[] { StripsApart.Flat(problem), StripsApart.Least(problem) })
            {
                var plan = new StripPlan(CutStyle.Plain, problem.Width, strips, 0, 0);
                plan.ShouldHold(problem);
                strips.ShouldAllBe(strip => strip.Segments.Length == 1);
                plan.Total.ShouldBeGreaterThanOrEqualTo(problem.EasyBound);
            }
        }
    }

    [Test]
    public void Pieces_that_may_lie_either_way_take_the_least_of_all_divisions()
    {
        for (int seed = 0; seed < 200; seed++)
        {
            var random = new Random(seed);
            long width = random.Next(20, 90),
                longer = random.Next(2, (int)width),
                shorter = random.Next(1, (int)longer),
                count = random.Next(1, 60);
            var problem = new CutProblem(
                width,
                [new CutPiece(0, longer, shorter, count, Turnable: true)]
            );
            long least = Enumerable
                .Range(0, (int)count + 1)
                .Min(standing =>
                    (Strips(standing, width / shorter) * longer)
                    + (Strips(count - standing, width / longer) * shorter)
                );
            StripsApart.Least(problem).Sum(strip => strip.Total).ShouldBe(least, $"seed {seed}");
        }

        static long Strips(long count, long each) => (count + each - 1) / each;
    }
}
