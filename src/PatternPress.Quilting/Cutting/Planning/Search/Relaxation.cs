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
    /// <summary>How many strips of each family are cut.</summary>
    public double[] PerFamily(StripModel model)
    {
        var strips = new double[model.Families.Length];
        foreach (var (pattern, times) in Strips)
            strips[pattern.Family] += times;
        return strips;
    }

    /// <summary>The fractional total, not safe from rounding errors: for comparisons only.</summary>
    public double Total { get; } = Strips.Sum(strip => strip.Times * strip.Pattern.Cost);

    public enum Kind
    {
        Solved,

        /// <summary>No plan below the cutoff is left in the subproblem: proved.</summary>
        Pruned,

        /// <summary>The linear program gave no usable answer; the bound still holds.</summary>
        Failed,
    }

    /// <summary>Where the simplex method stopped, to start a similar subproblem from.</summary>
    /// <param name="Patterns">Strips that were cut.</param>
    /// <param name="Kinds">Kinds of which more than asked for was made.</param>
    /// <param name="Binding">Limits that bound, and whether from above.</param>
    public sealed record Basis(
        StripPattern[] Patterns,
        int[] Kinds,
        (Tally Tally, bool FromAbove)[] Binding
    );
}

/// <summary>Column generation: the linear program over the strips found so far, and the pricing of new ones, until no
/// strip improves it. The bound is Lagrange's, computed in whole numbers from rounded prices, and holds whatever the
/// floating-point part did.</summary>
internal sealed class Relaxation(StripModel model, PatternPool pool, Func<long, long> nextTotal)
{
    private readonly PatternPricer pricer = new(model);
    private readonly Room room = new();
    private long simplexWork;

    /// <summary>What setting one strip into a program costs, in the units of the other work.</summary>
    private const long ColumnWork = 60;

    public long Work => simplexWork + pricer.Work;

    private readonly long[] lengths = [.. model.Families.Select(family => family.Cost)];

    /// <summary>The least length of fabric.</summary>
    /// <param name="cutoff">Only totals below this are of interest.</param>
    public Relaxed Solve(Subproblem problem, long cutoff, Relaxed.Basis? start) =>
        Solve(problem, cutoff, start, lengths);

    /// <summary>What the strips of every plan shorter than the cutoff weigh together at least.</summary>
    /// <param name="weights">Of a strip of each family.</param>
    public Relaxed LeastWeight(
        Subproblem problem,
        long cutoff,
        Relaxed.Basis? start,
        long[] weights
    ) => Solve(problem, cutoff, start, weights);

    private Relaxed Solve(Subproblem problem, long cutoff, Relaxed.Basis? start, long[] costs)
    {
        var program = new Program(model, problem, costs, room);
        foreach (var pattern in pool.Patterns)
            program.TryAdd(pattern);
        simplexWork += pool.Patterns.Count * ColumnWork;
        if (start is not null)
            program.Start(start);

        var isLength = ReferenceEquals(costs, lengths);
        var bound = isLength ? problem.Spent : 0;
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
            var charged = infeasible ? new long[costs.Length] : costs;
            var found = constant - Overvalued(problem, prices, charged, cutoff);
            if (infeasible)
            {
                if (found.Sign > 0)
                    return new(Relaxed.Kind.Pruned, cutoff, [], program.End());
            }
            else if (found.Sign > 0)
            {
                var ceiling = found.ShiftedUp(prices.ScaleBits);
                bound = Math.Max(bound, isLength ? problem.Spent + nextTotal(ceiling) : ceiling);
                if (isLength && bound >= cutoff)
                    return new(Relaxed.Kind.Pruned, cutoff, [], program.End());
            }

            if (!Extend(program, prices, charged))
                return infeasible
                    ? new(Relaxed.Kind.Failed, bound, [], program.End())
                    : new(Relaxed.Kind.Solved, bound, program.Solution(), program.End());
        }
    }

    /// <summary>The most by which the strips of a plan below the cutoff can together be worth more than they are charged
    /// for. Strips are no more than the fabric is long enough for, and no more than pieces.</summary>
    private WideSum Overvalued(Subproblem problem, Prices prices, long[] charged, long cutoff)
    {
        var fabric = Math.Max(0, cutoff - 1 - problem.Spent);
        long pieces = 0;
        foreach (var demand in problem.Demand)
            pieces += demand;
        var free = false;
        var byLength = WideSum.Zero;
        long byCount = 0;
        for (var family = 0; family < charged.Length; family++)
        {
            var length = lengths[family];
            free |= length == 0;
            var over = Over(family, charged, prices);
            if (over <= 0)
                continue;
            byCount = Math.Max(byCount, over);
            byLength = WideSum.Max(
                byLength,
                WideSum.Product(over, length == 0 ? pieces : fabric / length + 1)
            );
        }
        // However strips of different heights are mixed, one family's worth is the most the whole length can gain; a
        // family that costs no length may be had beside them.
        return WideSum.Min(WideSum.Product(byCount, pieces), free ? byLength + byLength : byLength);
    }

    /// <summary>How much more the best strip of a family is worth than it is charged for. Prices and charges are scaled
    /// so that either stays below 2⁶⁰.</summary>
    private long Over(int family, long[] charged, Prices prices) =>
        pricer.Worth(family) - (charged[family] << prices.ScaleBits);

    private bool Extend(Program program, Prices prices, long[] charged)
    {
        var added = false;
        // One millionth of a unit: less cannot change a total.
        var least = Math.Max(1, (1L << prices.ScaleBits) / 1_000_000);
        for (var family = 0; family < model.Families.Length; family++)
        {
            if (Over(family, charged, prices) <= least)
                continue;
            var pattern = pricer.Pattern(family);
            if (pattern.Placements.IsEmpty)
                continue;
            pool.Add(pattern);
            added |= program.TryAdd(pattern);
        }
        return added;
    }

    /// <summary>What programs are written into, one after another.</summary>
    private sealed class Room
    {
        public Simplex Simplex { get; } = new();

        public List<StripPattern> Patterns { get; } = [];

        public Dictionary<StripPattern, int> Column { get; } = [];

        /// <summary>For one column.</summary>
        public int[] Index { get; set; } = [];

        public double[] Value { get; set; } = [];
    }

    /// <summary>The rows of one subproblem: a kind each, then a limit each. A new one in the same room ends the last.</summary>
    private sealed class Program
    {
        private readonly StripModel model;
        private readonly Subproblem problem;
        private readonly int[] rowOfKind;
        private readonly int kinds;
        private readonly List<StripPattern> patterns;
        private readonly Dictionary<StripPattern, int> column;
        private readonly long[] costs;

        /// <summary>Room for one column.</summary>
        private readonly int[] index;
        private readonly double[] value;

        public Program(StripModel model, Subproblem problem, long[] costs, Room room)
        {
            (patterns, column) = (room.Patterns, room.Column);
            patterns.Clear();
            column.Clear();
            this.costs = costs;
            this.model = model;
            this.problem = problem;
            rowOfKind = new int[problem.Demand.Length];
            for (var kind = 0; kind < rowOfKind.Length; kind++)
                rowOfKind[kind] = problem.Demand[kind] > 0 ? kinds++ : -1;
            var rows = kinds + problem.Limits.Length;
            if (room.Index.Length < rows)
                (room.Index, room.Value) = (new int[rows], new double[rows]);
            (index, value) = (room.Index, room.Value);
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
            Simplex = room.Simplex;
            Simplex.Begin(lower, upper);
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

            var count = 0;
            for (var i = 0; i < pattern.Placements.Length; i++)
            {
                var row = rowOfKind[model.Placements[pattern.Placements[i]].Kind];
                var known = Array.IndexOf(index, row, 0, count);
                if (known < 0)
                    (index[count], value[count++]) = (row, pattern.Copies[i]);
                else
                    value[known] += pattern.Copies[i];
            }
            for (var i = 0; i < problem.Limits.Length; i++)
                if (problem.Limits[i].Tally.Of(model, pattern) is var weight and not 0)
                    (index[count], value[count++]) = (kinds + i, weight);
            Simplex.Add(index.AsSpan(0, count), value.AsSpan(0, count), costs[pattern.Family]);
            return true;
        }

        public void Start(Relaxed.Basis basis)
        {
            var basic = new bool[kinds + problem.Limits.Length];
            var atUpper = new bool[basic.Length];
            foreach (var kind in basis.Kinds)
                if (rowOfKind[kind] >= 0)
                    basic[rowOfKind[kind]] = true;
            for (var i = 0; i < problem.Limits.Length; i++)
            {
                basic[kinds + i] = true;
                foreach (var (tally, fromAbove) in basis.Binding)
                    if (tally.Equals(problem.Limits[i].Tally))
                        (basic[kinds + i], atUpper[kinds + i]) = (false, fromAbove);
            }
            var columns = new List<int>(basis.Patterns.Length);
            foreach (var pattern in basis.Patterns)
                if (column.TryGetValue(pattern, out var at))
                    columns.Add(at);
            Simplex.Start(columns, basic, atUpper);
        }

        public Relaxed.Basis End()
        {
            var cut = new List<StripPattern>();
            for (var i = 0; i < patterns.Count; i++)
                if (Simplex.IsColumnBasic(i))
                    cut.Add(patterns[i]);
            var surplus = new List<int>();
            for (var kind = 0; kind < rowOfKind.Length; kind++)
                if (rowOfKind[kind] >= 0 && Simplex.IsRowBasic(rowOfKind[kind]))
                    surplus.Add(kind);
            var binding = new List<(Tally, bool)>();
            for (var i = 0; i < problem.Limits.Length; i++)
                if (!Simplex.IsRowBasic(kinds + i))
                    binding.Add((problem.Limits[i].Tally, Simplex.IsRowAtUpper(kinds + i)));
            return new([.. cut], [.. surplus], [.. binding]);
        }

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
        public Prices Prices(bool infeasible, out WideSum constant)
        {
            var duals = Simplex.Duals;
            double largest = infeasible ? 1 : Math.Max(1, costs.Max());
            for (var row = 0; row < duals.Length; row++)
                largest = Math.Max(
                    largest,
                    Math.Abs(duals[row])
                        * (row < kinds ? 1 : problem.Limits[row - kinds].Tally.Heaviest)
                );
            var prices = new Prices(model);
            // A strip's worth is a sum of up to as many prices as pieces fit and limits hold.
            var room =
                (double)(1L << 60) / (model.Runs.Max(run => run.Width) + problem.Limits.Length + 2);
            while (prices.ScaleBits < 44 && largest * (1L << prices.ScaleBits) * 2 < room)
                prices.ScaleBits++;
            double scale = 1L << prices.ScaleBits;

            constant = WideSum.Zero;
            for (var kind = 0; kind < rowOfKind.Length; kind++)
            {
                if (rowOfKind[kind] < 0)
                    continue;
                prices.Kind[kind] = Math.Max(0, (long)Math.Floor(duals[rowOfKind[kind]] * scale));
                constant += WideSum.Product(prices.Kind[kind], problem.Demand[kind]);
            }
            for (var i = 0; i < problem.Limits.Length; i++)
            {
                var limit = problem.Limits[i];
                var price = (long)Math.Floor(duals[kinds + i] * scale);
                if (price == 0 || (price < 0 && limit.Most == Limit.None))
                    continue;
                constant += WideSum.Product(price, price > 0 ? limit.Least : limit.Most);
                if (limit.Tally is Tally.Start start)
                {
                    var key = (start.Run, start.Placement);
                    if (!prices.Starts.TryGetValue(key, out var starts))
                        prices.Starts[key] = starts = [];
                    starts.Add((start.Position, price));
                    continue;
                }
                if (limit.Tally is Tally.Pieces pieces)
                {
                    if (!prices.Pieces.TryGetValue(pieces.InFamily, out var extra))
                        prices.Pieces[pieces.InFamily] = extra = [];
                    extra[pieces.Placement] = extra.GetValueOrDefault(pieces.Placement) + price;
                    continue;
                }
                for (var family = 0; family < model.Families.Length; family++)
                    prices.Family[family] += price * limit.Tally.OfFamily(model, family);
            }
            return prices;
        }
    }
}
