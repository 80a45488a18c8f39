using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>What is left to plan after some strips are fixed and some limits set.</summary>
/// <param name="Demand">Pieces of each kind still to be made.</param>
/// <param name="Limits">For the strips still to be chosen.</param>
/// <param name="Spent">Fabric length of the strips already fixed, grid units.</param>
internal sealed record Subproblem(long[] Demand, ImmutableArray<Limit> Limits, long Spent)
{
    /// <summary>Whether a pattern cut so many times keeps within every limit.</summary>
    public bool Allows(StripModel model, StripPattern pattern, long times)
    {
        foreach (var limit in Limits)
            if (
                limit.Most != Limit.None
                && limit.Tally.Of(model, pattern) is var weight and > 0
                && times * weight > limit.Most
            )
                return false;
        return true;
    }

    /// <summary>The rest after cutting a pattern so many times.</summary>
    public Subproblem After(StripModel model, StripPattern pattern, long times)
    {
        var demand = (long[])Demand.Clone();
        for (var i = 0; i < pattern.Placements.Length; i++)
        {
            var kind = model.Placements[pattern.Placements[i]].Kind;
            demand[kind] = Math.Max(0, demand[kind] - times * pattern.Copies[i]);
        }
        var limits = Limits
            .Select(limit =>
            {
                var used = times * limit.Tally.Of(model, pattern);
                return limit with
                {
                    Least = Math.Max(0, limit.Least - used),
                    Most = limit.Most == Limit.None ? Limit.None : limit.Most - used,
                };
            })
            .ToImmutableArray();
        return new(demand, limits, Spent + times * pattern.Cost);
    }
}
