using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>Chooses what to branch on: a number of strips that is not whole in a fractional plan.</summary>
internal static class Branching
{
    private const double Whole = 1e-6;

    /// <summary>The number of strips of a family that is furthest from whole; null if all are whole.</summary>
    public static Tally? OnFamilies(StripModel model, Relaxed relaxed, out double value)
    {
        var families = relaxed.PerFamily(model);
        Tally? best = null;
        value = 0;
        var distance = Whole;
        for (var family = 0; family < families.Length; family++)
            Consider(new Tally.Family(family), families[family], ref best, ref value, ref distance);
        return best;
    }

    /// <summary>The number of pieces of a placement in the strips of a family that is furthest from whole.</summary>
    public static Tally? OnPieces(StripModel model, Relaxed relaxed, out double value)
    {
        var pieces = new SortedDictionary<(int Family, int Placement), double>();
        foreach (var (pattern, times) in relaxed.Strips)
            for (var i = 0; i < pattern.Placements.Length; i++)
            {
                var key = (pattern.Family, pattern.Placements[i]);
                pieces[key] = pieces.GetValueOrDefault(key) + times * pattern.Copies[i];
            }
        Tally? best = null;
        value = 0;
        var distance = Whole;
        foreach (var ((family, placement), sum) in pieces)
            Consider(new Tally.Pieces(family, placement), sum, ref best, ref value, ref distance);
        return best;
    }

    /// <summary>The number of strips in which a piece begins at a position that is furthest from whole.</summary>
    public static Tally? OnStarts(StripModel model, Relaxed relaxed, out double value)
    {
        var starts = new SortedDictionary<(int Run, int Placement, int Position), double>();
        foreach (var (pattern, times) in relaxed.Strips)
        foreach (var start in pattern.Starts())
            starts[start] = starts.GetValueOrDefault(start) + times;
        Tally? best = null;
        value = 0;
        var distance = Whole;
        foreach (var ((run, placement, position), sum) in starts)
            Consider(
                new Tally.Start(run, placement, position),
                sum,
                ref best,
                ref value,
                ref distance
            );
        return best;
    }

    public static ImmutableArray<Limit> Tighten(
        ImmutableArray<Limit> limits,
        Tally tally,
        long least,
        long most
    )
    {
        for (var i = 0; i < limits.Length; i++)
            if (limits[i].Tally == tally)
                return limits.SetItem(
                    i,
                    new(tally, Math.Max(limits[i].Least, least), Math.Min(limits[i].Most, most))
                );
        return limits.Add(new(tally, least, most));
    }

    private static void Consider(
        Tally tally,
        double sum,
        ref Tally? best,
        ref double value,
        ref double distance
    )
    {
        var off = Math.Abs(sum - Math.Round(sum));
        if (off <= distance + 1e-9)
            return;
        (best, value, distance) = (tally, sum, off);
    }
}
