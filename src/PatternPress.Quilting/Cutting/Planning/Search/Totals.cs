using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>The total heights that sums of strip heights can have at all: between them a bound may be rounded up.
/// </summary>
internal sealed class Totals
{
    private const int Tabulated = 1 << 16;

    private readonly long unit;
    private readonly bool[] reached;

    public Totals(StripModel model, long highest)
    {
        unit = model.Heights.Aggregate(
            0L,
            (unit, height) => Rational.GreatestCommonDivisor(unit, height)
        );
        reached = new bool[(int)Math.Min(Tabulated, unit == 0 ? 1 : highest / unit + 1)];
        reached[0] = true;
        foreach (var height in model.Heights)
            for (var total = height / unit; total < reached.Length; total++)
                reached[total] |= reached[total - height / unit];
    }

    /// <summary>The least possible total that is not below this one.</summary>
    public long Next(long total)
    {
        if (unit == 0)
            return total;
        var steps = (total + unit - 1) / unit;
        while (steps < reached.Length && !reached[steps])
            steps++;
        return steps * unit;
    }
}
