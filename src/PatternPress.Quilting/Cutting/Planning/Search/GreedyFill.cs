using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>A quick whole plan the way a cutter works by hand: heights from the tallest down, strips filled with the
/// tallest and longest pieces that fit; where strips may not be mixed, only the last of a height takes shorter ones.
/// </summary>
internal static class GreedyFill
{
    /// <summary>A plan for what is left to make; it heeds the caps of families, but no other limits.</summary>
    public static ImmutableArray<(StripPattern Pattern, long Times)> Of(
        StripModel model,
        Subproblem problem
    )
    {
        var left = (long[])problem.Demand.Clone();
        var strips = ImmutableArray.CreateBuilder<(StripPattern, long)>();

        // Every kind lies as flat as it can; the tallest of these must have a strip of its height.
        var flattest = new int[left.Length];
        for (var i = 0; i < model.Placements.Length; i++)
            flattest[model.Placements[i].Kind] = i;
        Array.Sort(flattest);
        foreach (var leader in flattest)
            while (left[model.Placements[leader].Kind] > 0)
            {
                var height = model.Placements[leader].Height;
                var free = Family(height, once: false);
                var once = Family(height, once: true);
                var pattern = Fill(model, free, left);
                var times = Times(model, pattern, left);
                var rest = (long[])left.Clone();
                Take(model, pattern, times, rest);
                var last = !flattest.Any(i =>
                    model.Placements[i].Height == height && rest[model.Placements[i].Kind] > 0
                );
                if (last && once >= 0)
                {
                    if (times > 1)
                        strips.Add((pattern, times - 1));
                    Take(model, pattern, times - 1, left);
                    (pattern, times) = (Fill(model, once, left), 1);
                }
                Take(model, pattern, times, left);
                strips.Add((pattern, times));
            }
        return strips.ToImmutable();

        int Family(long height, bool once) =>
            Array.FindIndex(
                model.Families,
                family =>
                    family.Height == height
                    && family.Cost > 0
                    && family.Cap != Limit.None == once
                    && !(once && IsUsedUp(family))
            );

        bool IsUsedUp(StripFamily family) =>
            problem.Limits.Any(limit =>
                limit.Tally is Tally.Mixed mixed
                && family.Height >= mixed.Height
                && strips
                    .Where(strip => mixed.OfFamily(model, strip.Item1.Family) > 0)
                    .Sum(strip => strip.Item2) >= limit.Most
            );
    }

    private static StripPattern Fill(StripModel model, int familyIndex, long[] left)
    {
        var family = model.Families[familyIndex];
        var run = model.Runs[family.Run];
        var rest = (long[])left.Clone();
        var room = run.Width;
        var placements = new List<int>();
        var copies = new List<int>();
        for (var i = family.First; i < run.End; i++)
        {
            var placement = model.Placements[i];
            var count = (int)Math.Min(rest[placement.Kind], room / placement.Width);
            if (count == 0)
                continue;
            placements.Add(i);
            copies.Add(count);
            rest[placement.Kind] -= count;
            room -= count * placement.Width;
        }
        return new(model, familyIndex, [.. placements], [.. copies]);
    }

    /// <summary>How many such strips can be cut before one would make more than is left.</summary>
    private static long Times(StripModel model, StripPattern pattern, long[] left)
    {
        var times = long.MaxValue;
        foreach (var placement in pattern.Placements)
        {
            var kind = model.Placements[placement].Kind;
            times = Math.Min(times, left[kind] / pattern.Yield(kind));
        }
        return times;
    }

    private static void Take(StripModel model, StripPattern pattern, long times, long[] left)
    {
        for (var i = 0; i < pattern.Placements.Length; i++)
            left[model.Placements[pattern.Placements[i]].Kind] -= times * pattern.Copies[i];
    }
}
