using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>Branch and bound over fractional plans: first on how many strips are at least so tall, which decides the
/// total height; then, where pieces still do not come out whole, on the positions of pieces.</summary>
internal sealed class StripSearch
{
    /// <summary>Nodes between two dives, beside those where all heights are decided.</summary>
    private const int DiveEvery = 8;

    /// <summary>Nodes within which most lists are solved without tightening.</summary>
    private const int FirstNodes = 200;

    private readonly StripModel model;
    private readonly long budget;
    private readonly Func<long, bool>? settled;
    private readonly Totals totals;

    // Most lists are settled without it.
    private readonly Lazy<Relaxation> relaxation;
    private readonly PriorityQueue<Node, (long Bound, int Depth, int Serial)> open = new();
    private readonly HeightBranching heights;
    private int serial;
    private int nodes;

    /// <summary>Least bound of a node that could not be solved for rounding errors.</summary>
    private long abandoned = long.MaxValue;

    private sealed record Node(
        Subproblem Problem,
        long Bound,
        int Depth,
        Relaxed.Basis? Start,
        Origin? Origin = null
    );

    /// <summary>How a node came about: the branch, how far it moved the tally, and the fractional total before.</summary>
    private sealed record Origin(Tally Tally, bool Up, double Moved, double Total);

    /// <param name="settled">Where this is said of the lower bound, the search ends.</param>
    public StripSearch(StripModel model, long budget, Func<long, bool>? settled = null)
    {
        this.model = model;
        this.budget = budget;
        this.settled = settled;
        Best = GreedyFill.Of(model, model.Everything);
        Upper = Best.Sum(strip => strip.Times * strip.Pattern.Cost);
        totals = new Totals(model, Upper);
        heights = new(model);
        relaxation = new(() => new(model, new PatternPool(), totals.Next), isThreadSafe: false);
    }

    public ImmutableArray<(StripPattern Pattern, long Times)> Best { get; private set; }

    public long Upper { get; private set; }

    public long Lower { get; private set; }

    public long Work => relaxation.IsValueCreated ? relaxation.Value.Work : 0;

    public void Run()
    {
        // Often what can be told without solving anything shows that the quick plan is the shortest.
        Push(new(model.Everything, totals.Next(model.QuickBound), 0, null));
        Explore(FirstNodes);
        if (open.Count > 0 && Lower < Upper && Work < budget && settled?.Invoke(Lower) != true)
        {
            // Hard to close: worth the work of tightening the relaxation and beginning again.
            var root = Tightened();
            open.Clear();
            abandoned = long.MaxValue;
            Push(root);
            Explore(int.MaxValue);
        }
        Lower = Math.Min(open.Count == 0 ? Upper : Lower, abandoned);
    }

    private void Explore(int most)
    {
        for (var count = 0; count < most && open.TryPeek(out var node, out var key); count++)
        {
            Lower = Math.Min(Upper, Math.Max(Lower, key.Bound));
            if (Lower >= Upper || Work > budget || settled?.Invoke(Lower) == true)
                return;
            open.Dequeue();
            Expand(node);
        }
    }

    /// <summary>The whole list with inequalities that its fractional plans break, as long as they raise the bound.
    /// </summary>
    private Node Tightened()
    {
        var rounding = new HeightRounding(model, relaxation.Value);
        var problem = model.Everything;
        var most = Work + (budget - Work) / 5;
        var relaxed = relaxation.Value.Solve(problem, Upper, null);
        while (relaxed.Outcome == Relaxed.Kind.Solved && Work < most)
        {
            var broken = rounding.Broken(relaxed.PerFamily(model), Upper, most);
            if (broken.Count == 0)
                break;
            var more = problem with { Limits = [.. problem.Limits, .. broken] };
            relaxed = relaxation.Value.Solve(more, Upper, relaxed.End);
            // Rows that do not bind only cost time.
            var binding = relaxed.End.Binding.Select(limit => limit.Tally).ToHashSet();
            problem = more with
            {
                Limits =
                [
                    .. more.Limits.Where(limit =>
                        limit.Tally is not Tally.Weighted || binding.Contains(limit.Tally)
                    ),
                ],
            };
        }
        return new(problem, Lower, 0, relaxed.End);
    }

    private void Push(Node node) => open.Enqueue(node, (node.Bound, -node.Depth, serial++));

    private void Expand(Node node)
    {
        nodes++;
        var relaxed = relaxation.Value.Solve(node.Problem, Upper, node.Start);
        if (relaxed.Outcome == Relaxed.Kind.Failed)
            relaxed = relaxation.Value.Solve(node.Problem, Upper, null);
        if (relaxed.Outcome == Relaxed.Kind.Pruned)
            return;
        var bound = Math.Max(node.Bound, relaxed.Bound);
        if (relaxed.Outcome == Relaxed.Kind.Failed)
        {
            abandoned = Math.Min(abandoned, bound);
            return;
        }
        if (open.Count == 0 && settled?.Invoke(Math.Min(Upper, bound)) == true)
        {
            // All that is left of the search, and already more than is asked about.
            Push(node with { Bound = bound });
            return;
        }
        if (node.Origin is { Tally: Tally.Taller taller } origin)
            heights.Learn(taller.Height, origin.Up, origin.Moved, relaxed.Total - origin.Total);
        var tally = Choose(node, relaxed, out var value);
        if (tally is null)
        {
            Keep(WholeFlow.Split(model, relaxed));
            return;
        }
        if (tally is not Tally.Taller || nodes % DiveEvery == 1)
            Dive(node.Problem, relaxed);
        if (bound >= Upper)
            return;

        var floor = (long)Math.Floor(value);
        Branch(floor + 1, Limit.None, floor + 1 - value);
        Branch(0, floor, value - floor);

        void Branch(long least, long most, double moved) =>
            Push(
                new(
                    Within(node.Problem, tally, least, most),
                    bound,
                    node.Depth + 1,
                    relaxed.End,
                    new(tally, least > 0, moved, relaxed.Total)
                )
            );
    }

    private static Subproblem Within(Subproblem problem, Tally tally, long least, long most) =>
        problem with
        {
            Limits = Branching.Tighten(problem.Limits, tally, least, most),
        };

    /// <summary>What to branch on: numbers of strips by height first, for they decide the total; then what tells plans of
    /// one total apart. Null if all is whole.</summary>
    private Tally? Choose(Node node, Relaxed relaxed, out double value)
    {
        var choice = heights.Choose(
            relaxed,
            (height, count, up) =>
            {
                var branch = Within(
                    node.Problem,
                    new Tally.Taller(height),
                    up ? count : 0,
                    up ? Limit.None : count
                );
                var solved = relaxation.Value.Solve(branch, Upper, relaxed.End);
                return solved.Outcome == Relaxed.Kind.Solved
                    ? solved.Total - relaxed.Total
                    : double.PositiveInfinity;
            }
        );
        if (choice is { } chosen)
        {
            value = chosen.Strips;
            return new Tally.Taller(chosen.Height);
        }
        return Branching.OnFamilies(model, relaxed, out value)
            ?? Branching.OnPieces(model, relaxed, out value)
            ?? Branching.OnStarts(model, relaxed, out value);
    }

    /// <summary>Fixes what is whole, then strip by strip what is nearly so, solving again in between.</summary>
    private void Dive(Subproblem problem, Relaxed relaxed)
    {
        var taken = new List<(StripPattern, long)>();
        while (true)
        {
            var whole = relaxed.Strips.Where(strip => strip.Times >= 1 - 1e-6).ToList();
            if (whole.Count > 0)
                foreach (var (pattern, times) in whole)
                    Take(pattern, (long)Math.Floor(times + 1e-6));
            else if (Likeliest() is { } likely)
                Take(likely, 1);
            else
                return;
            if (problem.Spent >= Upper)
                return;
            if (problem.Demand.All(demand => demand == 0))
            {
                Keep([.. taken]);
                return;
            }
            var rest = GreedyFill.Of(model, problem);
            if (problem.Spent + rest.Sum(strip => strip.Times * strip.Pattern.Cost) < Upper)
                Keep([.. taken, .. rest]);
            relaxed = relaxation.Value.Solve(problem, Upper, relaxed.End);
            if (relaxed.Outcome != Relaxed.Kind.Solved)
                return;
        }

        StripPattern? Likeliest()
        {
            StripPattern? likeliest = null;
            var most = double.NegativeInfinity;
            foreach (var (pattern, times) in relaxed.Strips)
                if (times > most && problem.Allows(model, pattern, 1))
                    (likeliest, most) = (pattern, times);
            return likeliest;
        }

        void Take(StripPattern pattern, long times)
        {
            taken.Add((pattern, times));
            problem = problem.After(model, pattern, times);
        }
    }

    /// <summary>Keeps a plan if it is the shortest so far; pieces it should lack are added first.</summary>
    private void Keep(ImmutableArray<(StripPattern Pattern, long Times)> strips)
    {
        var rest = strips.Aggregate(
            model.Everything,
            (rest, strip) => rest.After(model, strip.Pattern, strip.Times)
        );
        strips = [.. strips, .. GreedyFill.Of(model, rest)];
        var total = strips.Sum(strip => strip.Times * strip.Pattern.Cost);
        if (total >= Upper)
            return;
        Upper = total;
        Best = strips;
    }
}
