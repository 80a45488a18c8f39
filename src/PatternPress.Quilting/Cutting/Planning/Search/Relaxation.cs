using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>Answer to a subproblem whose strips may be cut a fractional number of times.</summary>
internal sealed record Relaxed(
    Relaxed.Kind Outcome,
    long Bound,
    ImmutableArray<(StripPattern Pattern, double Times)> Strips,
    Relaxed.Basis End
)
{
    public enum Kind
    {
        Solved,

        /// <summary>No plan below the cutoff is left in the subproblem: proved.</summary>
        Pruned,

        /// <summary>The linear program gave no usable answer; the bound still holds.</summary>
        Failed,
    }

    /// <summary>Where the simplex method stopped, to start a similar subproblem from.</summary>
    public sealed record Basis(
        ImmutableArray<StripPattern> Patterns,
        ImmutableHashSet<int> Kinds,
        ImmutableDictionary<Condition, bool> Upper
    );
}

/// <summary>Column generation: the linear program over the strips found so far, and the pricing of new ones, until no
/// strip improves it. The bound is Lagrange's, computed in whole numbers from rounded prices, and holds whatever the
/// floating-point part did.</summary>
internal sealed class Relaxation(StripModel model, PatternPool pool, Func<long, long> nextTotal)
{
    private readonly PatternPricer pricer = new(model);
    private long simplexWork;

    public long Work => simplexWork + pricer.Work;

    /// <param name="cutoff">Only totals below this are of interest.</param>
    public Relaxed Solve(Subproblem problem, long cutoff, Relaxed.Basis? start)
    {
        var program = new Program(model, problem);
        foreach (var pattern in pool.Patterns)
            program.TryAdd(pattern);
        if (start is not null)
            program.Start(start);

        var bound = problem.Spent;
        while (true)
        {
            var before = program.Simplex.Work;
            var outcome = program.Simplex.Solve();
            simplexWork += program.Simplex.Work - before;
            if (outcome == Simplex.Outcome.Failed)
                return new(Relaxed.Kind.Failed, bound, [], program.End());

            var infeasible = outcome == Simplex.Outcome.Infeasible;
            var prices = program.Prices(infeasible, out var constant);
            pricer.Price(prices, problem.Demand);
            var found = Bound(problem, prices, constant, infeasible, cutoff);
            if (
                infeasible
                    ? found > 0
                    : (bound = Math.Max(bound, Total(problem, found, prices))) >= cutoff
            )
                return new(Relaxed.Kind.Pruned, cutoff, [], program.End());

            if (!Extend(program, prices, infeasible))
                return infeasible
                    ? new(Relaxed.Kind.Failed, bound, [], program.End())
                    : new(Relaxed.Kind.Solved, bound, program.Solution(), program.End());
        }
    }

    private long Total(Subproblem problem, Int128 found, Prices prices)
    {
        if (found <= 0)
            return problem.Spent;
        var ceiling = (long)((found + prices.Scale - 1) / prices.Scale);
        return problem.Spent + nextTotal(ceiling);
    }

    /// <summary>Whatever strips are chosen, their cost is at least the worth of what they must make, less what the
    /// overvalued strips among them could gain.</summary>
    private Int128 Bound(
        Subproblem problem,
        Prices prices,
        Int128 constant,
        bool infeasible,
        long cutoff
    )
    {
        var length = Math.Max(0, cutoff - 1 - problem.Spent);
        Int128 loss = 0;
        Int128 worstRatio = 0;
        long worstCost = 1;
        for (var family = 0; family < model.Families.Length; family++)
        {
            var cost = model.Families[family].Cost;
            var over =
                (Int128)pricer.Worth(family) - (infeasible ? 0 : (Int128)cost * prices.Scale);
            if (over <= 0)
                continue;
            if (over * worstCost > worstRatio * cost)
                (worstRatio, worstCost) = (over, cost);
        }
        // Strips worth more than they cost: however they are mixed, no more of them fit the length that is left.
        loss += (worstRatio * length + worstCost - 1) / worstCost;
        return constant - loss;
    }

    private bool Extend(Program program, Prices prices, bool infeasible)
    {
        var added = false;
        // One millionth of a unit: less cannot change a total.
        var least = Math.Max(1, prices.Scale / 1_000_000);
        for (var family = 0; family < model.Families.Length; family++)
        {
            var cost = infeasible ? 0 : (Int128)model.Families[family].Cost * prices.Scale;
            if (pricer.Worth(family) - cost <= least)
                continue;
            var pattern = pricer.Pattern(family);
            if (pattern.Placements.IsEmpty)
                continue;
            pool.Add(pattern);
            added |= program.TryAdd(pattern);
        }
        return added;
    }

    /// <summary>The rows of one subproblem: a kind each, then a limit each.</summary>
    private sealed class Program
    {
        private readonly StripModel model;
        private readonly Subproblem problem;
        private readonly int[] rowOfKind;
        private readonly int kinds;
        private readonly List<StripPattern> patterns = [];
        private readonly Dictionary<StripPattern, int> column = [];

        public Program(StripModel model, Subproblem problem)
        {
            this.model = model;
            this.problem = problem;
            rowOfKind = new int[problem.Demand.Length];
            for (var kind = 0; kind < rowOfKind.Length; kind++)
                rowOfKind[kind] = problem.Demand[kind] > 0 ? kinds++ : -1;
            var rows = kinds + problem.Limits.Length;
            var lower = new double[rows];
            var upper = new double[rows];
            for (var kind = 0; kind < rowOfKind.Length; kind++)
                if (rowOfKind[kind] >= 0)
                    (lower[rowOfKind[kind]], upper[rowOfKind[kind]]) = (
                        problem.Demand[kind],
                        double.PositiveInfinity
                    );
            for (var i = 0; i < problem.Limits.Length; i++)
            {
                var limit = problem.Limits[i];
                lower[kinds + i] = limit.Least;
                upper[kinds + i] = limit.Most == Limit.None ? double.PositiveInfinity : limit.Most;
            }
            Simplex = new(lower, upper);
        }

        public Simplex Simplex { get; }

        /// <summary>Adds the strip unless it is there or makes more of a kind than is left to make.</summary>
        public bool TryAdd(StripPattern pattern)
        {
            for (var i = 0; i < pattern.Placements.Length; i++)
                if (
                    pattern.Copies[i] > problem.Demand[model.Placements[pattern.Placements[i]].Kind]
                )
                    return false;
            if (!column.TryAdd(pattern, patterns.Count))
                return false;
            patterns.Add(pattern);

            var index = new List<int>();
            var value = new List<double>();
            for (var i = 0; i < pattern.Placements.Length; i++)
            {
                var row = rowOfKind[model.Placements[pattern.Placements[i]].Kind];
                var known = index.IndexOf(row);
                if (known < 0)
                {
                    index.Add(row);
                    value.Add(pattern.Copies[i]);
                }
                else
                    value[known] += pattern.Copies[i];
            }
            for (var i = 0; i < problem.Limits.Length; i++)
                if (problem.Limits[i].Condition.HoldsFor(model, pattern))
                {
                    index.Add(kinds + i);
                    value.Add(1);
                }
            Simplex.Add([.. index], [.. value], pattern.Cost);
            return true;
        }

        public void Start(Relaxed.Basis basis)
        {
            var kindOfRow = new int[kinds];
            for (var kind = 0; kind < rowOfKind.Length; kind++)
                if (rowOfKind[kind] >= 0)
                    kindOfRow[rowOfKind[kind]] = kind;
            Simplex.Start(
                basis.Patterns.Where(column.ContainsKey).Select(pattern => column[pattern]),
                row =>
                    row < kinds
                        ? basis.Kinds.Contains(kindOfRow[row])
                        : !basis.Upper.ContainsKey(problem.Limits[row - kinds].Condition),
                row =>
                    row >= kinds
                    && basis.Upper.GetValueOrDefault(problem.Limits[row - kinds].Condition)
            );
        }

        public Relaxed.Basis End() =>
            new(
                [.. patterns.Where((_, i) => Simplex.IsColumnBasic(i))],
                [
                    .. Enumerable
                        .Range(0, rowOfKind.Length)
                        .Where(kind => rowOfKind[kind] >= 0 && Simplex.IsRowBasic(rowOfKind[kind])),
                ],
                Enumerable
                    .Range(0, problem.Limits.Length)
                    .Where(i => !Simplex.IsRowBasic(kinds + i))
                    .ToImmutableDictionary(
                        i => problem.Limits[i].Condition,
                        i => Simplex.IsRowAtUpper(kinds + i)
                    )
            );

        public ImmutableArray<(StripPattern, double)> Solution()
        {
            var values = Simplex.Values();
            var strips = ImmutableArray.CreateBuilder<(StripPattern, double)>();
            for (var i = 0; i < values.Length; i++)
                if (values[i] > 1e-9)
                    strips.Add((patterns[i], values[i]));
            return strips.ToImmutable();
        }

        /// <summary>The program's prices rounded to whole multiples of the finest unit that leaves room for sums.</summary>
        /// <param name="constant">What all pieces and limits are worth together.</param>
        public Prices Prices(bool infeasible, out Int128 constant)
        {
            var duals = Simplex.Duals;
            double largest = infeasible ? 1 : model.Families.Max(family => family.Cost);
            foreach (var dual in duals)
                largest = Math.Max(largest, Math.Abs(dual));
            var prices = new Prices(model) { Scale = 1 };
            // A strip's worth is a sum of up to as many prices as pieces fit and limits hold.
            var room =
                (double)(1L << 60) / (model.Runs.Max(run => run.Width) + problem.Limits.Length + 2);
            while (prices.Scale < 1L << 44 && largest * prices.Scale * 2 < room)
                prices.Scale *= 2;

            constant = 0;
            for (var kind = 0; kind < rowOfKind.Length; kind++)
            {
                if (rowOfKind[kind] < 0)
                    continue;
                prices.Kind[kind] = Math.Max(
                    0,
                    (long)Math.Floor(duals[rowOfKind[kind]] * prices.Scale)
                );
                constant += (Int128)prices.Kind[kind] * problem.Demand[kind];
            }
            for (var i = 0; i < problem.Limits.Length; i++)
            {
                var limit = problem.Limits[i];
                var price = (long)Math.Floor(duals[kinds + i] * prices.Scale);
                if (price == 0 || (price < 0 && limit.Most == Limit.None))
                    continue;
                constant += (Int128)price * (price > 0 ? limit.Least : limit.Most);
                if (limit.Condition.IsStart)
                {
                    var key = (limit.Condition.Run, limit.Condition.Index);
                    if (!prices.Starts.TryGetValue(key, out var starts))
                        prices.Starts[key] = starts = [];
                    starts.Add((limit.Condition.Position, price));
                    continue;
                }
                for (var family = 0; family < model.Families.Length; family++)
                    if (limit.Condition.HoldsForFamily(model, family))
                        prices.Family[family] += price;
            }
            return prices;
        }
    }
}
