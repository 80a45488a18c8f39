using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>Inequalities that fractional plans break and whole ones do not. Heights are replaced by small whole numbers;
/// the least total of these over all fractional plans, rounded up, is a limit for every plan, because a plan's total of
/// whole numbers is whole (Chvátal's rounding). They weigh strips by height alone and so cost the pricing nothing.
/// </summary>
internal sealed class HeightRounding(StripModel model, Relaxation relaxation)
{
    /// <summary>Smallest violation worth a row.</summary>
    private const double Enough = 1e-3;

    /// <summary>The same for long lists, as a part of the row's total: less may be rounding errors.</summary>
    private const double EnoughOfTotal = 1e-8;

    /// <summary>How many parts of one of the heights are tried as the unit.</summary>
    private const int Parts = 6;

    private static readonly double[] Shifts = [0, 0.25, 0.5, 0.75];

    /// <summary>What was found out about each set of weights, asked again in the next round.</summary>
    private readonly Dictionary<string, (long[] Weights, long Least)> known = [];

    private Relaxed.Basis? start;

    /// <param name="strips">Strips of each family in a fractional plan.</param>
    /// <param name="most">No further inequalities are looked for when this much work is spent.</param>
    /// <param name="cutoff">The limits hold for plans below this total.</param>
    public List<Limit> Broken(double[] strips, long cutoff, long most)
    {
        var broken = new List<Limit>();
        foreach (var weights in Weights(strips))
        {
            var key = string.Join(' ', weights);
            if (!known.TryGetValue(key, out var row))
            {
                if (relaxation.Work > most)
                    break;
                var relaxed = relaxation.LeastWeight(model.Everything, cutoff, start, weights);
                start = relaxed.End;
                known[key] = row = (weights, relaxed.Bound);
            }
            double sum = 0;
            for (var family = 0; family < strips.Length; family++)
                sum += row.Weights[family] * strips[family];
            if (row.Least - sum > Math.Max(Enough, row.Least * EnoughOfTotal))
                broken.Add(new(new Tally.Weighted([.. row.Weights]), row.Least, Limit.None));
        }
        return broken;
    }

    /// <summary>Heights as multiples, rounded up, of each of the plan's own heights and of parts of them.</summary>
    private IEnumerable<long[]> Weights(double[] strips)
    {
        var units = Enumerable
            .Range(0, strips.Length)
            .Where(family => strips[family] > 1e-6)
            .Select(family => model.Families[family].Height)
            .Distinct()
            .OrderDescending()
            .ToArray();
        var seen = new HashSet<string>();
        for (var part = 1; part <= Parts; part++)
            foreach (var unit in units)
            foreach (var shift in Shifts)
            {
                var weights = model
                    .Families.Select(family =>
                        family.Cost == 0
                            ? 0
                            : (long)Math.Ceiling(family.Height * (double)part / unit - shift - 1e-9)
                    )
                    .ToArray();
                if (weights.Any(weight => weight > 0) && seen.Add(string.Join(' ', weights)))
                    yield return weights;
            }
    }
}
