using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>Chooses what to branch on: a number of strips that is not whole in a fractional plan.</summary>
internal static class Branching
{
    private const double Whole = 1e-6;

    /// <summary>The number of strips at least so tall that is not whole, the least height first: the number of all strips
    /// binds every price, and deciding it first leaves hundreds of nodes where other orders leave tens of thousands.
    /// When all are whole, the number of a family that is furthest from whole; null if these are whole too.</summary>
    public static Condition? OnHeights(StripModel model, Relaxed relaxed, out double value)
    {
        var families = new double[model.Families.Length];
        foreach (var (pattern, times) in relaxed.Strips)
            families[pattern.Family] += times;
        Condition? best = null;
        value = 0;
        var distance = Whole;
        for (var height = model.Heights.Length - 1; height >= 0 && best is null; height--)
        {
            double sum = 0;
            for (var family = 0; family < families.Length; family++)
                if (model.IsAtLeast(family, height))
                    sum += families[family];
            Consider(Condition.Taller(height), sum, ref best, ref value, ref distance);
        }
        if (best is null)
            for (var family = 0; family < families.Length; family++)
                Consider(
                    Condition.Family(family),
                    families[family],
                    ref best,
                    ref value,
                    ref distance
                );
        return best;
    }

    /// <summary>The number of strips in which a piece begins at a position that is furthest from whole.</summary>
    public static Condition? OnStarts(StripModel model, Relaxed relaxed, out double value)
    {
        var starts = new SortedDictionary<(int Run, int Placement, int Position), double>();
        foreach (var (pattern, times) in relaxed.Strips)
        foreach (var start in pattern.Starts())
            starts[start] = starts.GetValueOrDefault(start) + times;
        Condition? best = null;
        value = 0;
        var distance = Whole;
        foreach (var ((run, placement, position), sum) in starts)
            Consider(
                Condition.Start(run, placement, position),
                sum,
                ref best,
                ref value,
                ref distance
            );
        return best;
    }

    public static ImmutableArray<Limit> Tighten(
        ImmutableArray<Limit> limits,
        Condition condition,
        long least,
        long most
    )
    {
        for (var i = 0; i < limits.Length; i++)
            if (limits[i].Condition == condition)
                return limits.SetItem(
                    i,
                    new(condition, Math.Max(limits[i].Least, least), Math.Min(limits[i].Most, most))
                );
        return limits.Add(new(condition, least, most));
    }

    private static void Consider(
        Condition condition,
        double sum,
        ref Condition? best,
        ref double value,
        ref double distance
    )
    {
        var off = Math.Abs(sum - Math.Round(sum));
        if (off <= distance + 1e-9)
            return;
        (best, value, distance) = (condition, sum, off);
    }
}
