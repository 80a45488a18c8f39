using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>Splits a solution in which every number of strips that can be branched on is whole, though its strips may
/// not be, into whole strips: each piece's beginnings are handed out along the strips that reach its position.</summary>
internal static class WholeFlow
{
    public static ImmutableArray<(StripPattern Pattern, long Times)> Split(
        StripModel model,
        Relaxed relaxed
    )
    {
        var families = relaxed.PerFamily(model);
        var starts = new Dictionary<(int Run, int Placement, int Position), double>();
        foreach (var (pattern, times) in relaxed.Strips)
        foreach (var start in pattern.Starts())
            starts[start] = starts.GetValueOrDefault(start) + times;
        var left = starts.ToDictionary(start => start.Key, start => (long)Math.Round(start.Value));

        var strips = ImmutableArray.CreateBuilder<(StripPattern, long)>();
        for (var family = 0; family < families.Length; family++)
        for (var count = (long)Math.Round(families[family]); count > 0; )
        {
            var (pattern, times) = Walk(model, family, left);
            times = Math.Min(times, count);
            foreach (var start in pattern.Starts())
                left[start] -= times;
            strips.Add((pattern, times));
            count -= times;
        }
        return strips.ToImmutable();
    }

    private static (StripPattern Pattern, long Times) Walk(
        StripModel model,
        int family,
        Dictionary<(int Run, int Placement, int Position), long> left
    )
    {
        var run = model.Families[family].Run;
        var placements = new List<int>();
        var copies = new List<int>();
        var times = long.MaxValue;
        var at = 0;
        for (
            var placement = model.Families[family].First;
            placement < model.Runs[run].End;
            placement++
        )
        {
            var count = 0;
            while (left.GetValueOrDefault((run, placement, at)) is var here and > 0)
            {
                times = Math.Min(times, here);
                at += model.Placements[placement].Width;
                count++;
            }
            if (count == 0)
                continue;
            placements.Add(placement);
            copies.Add(count);
        }
        return (new(model, family, [.. placements], [.. copies]), times);
    }
}
