using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>Branch and bound over fractional plans: first on how many strips are at least so tall, which decides the
/// total height; then, where pieces still do not come out whole, on the positions of pieces.</summary>
internal sealed class StripSearch
{
    /// <summary>Nodes between two dives, beside those where all heights are decided.</summary>
    private const int DiveEvery = 8;

    private readonly StripModel model;
    private readonly long budget;
    private readonly Totals totals;
    private readonly PatternPool pool = new();
    private readonly Relaxation relaxation;
    private readonly PriorityQueue<Node, (long Bound, int Depth, int Serial)> open = new();
    private int serial;

    /// <summary>Least bound of a node that could not be solved for rounding errors.</summary>
    private long abandoned = long.MaxValue;

    private sealed record Node(Subproblem Problem, long Bound, int Depth, Relaxed.Basis? Start);

    public StripSearch(StripModel model, long budget)
    {
        this.model = model;
        this.budget = budget;
        Best = GreedyFill.Of(model, model.Everything);
        Upper = Best.Sum(strip => strip.Times * strip.Pattern.Cost);
        totals = new Totals(model, Upper);
        relaxation = new(model, pool, totals.Next);
    }

    public ImmutableArray<(StripPattern Pattern, long Times)> Best { get; private set; }

    public long Upper { get; private set; }

    public long Lower { get; private set; }

    public long Work => relaxation.Work;

    public int Nodes { get; private set; }

    public void Run()
    {
        Push(new(model.Everything, 0, 0, null));
        while (open.TryPeek(out var node, out var key))
        {
            Lower = Math.Min(Upper, Math.Max(Lower, key.Bound));
            if (Lower >= Upper || Work > budget)
                break;
            open.Dequeue();
            Expand(node);
            if (open.Count == 0)
                Lower = Upper;
        }
        Lower = Math.Min(Lower, abandoned);
    }

    private void Push(Node node) => open.Enqueue(node, (node.Bound, -node.Depth, serial++));

    private void Expand(Node node)
    {
        Nodes++;
        var relaxed = relaxation.Solve(node.Problem, Upper, node.Start);
        if (relaxed.Outcome == Relaxed.Kind.Failed)
            relaxed = relaxation.Solve(node.Problem, Upper, null);
        if (relaxed.Outcome == Relaxed.Kind.Pruned)
            return;
        var bound = Math.Max(node.Bound, relaxed.Bound);
        if (relaxed.Outcome == Relaxed.Kind.Failed)
        {
            abandoned = Math.Min(abandoned, bound);
            return;
        }
        var condition = Branching.OnHeights(model, relaxed, out var value);
        if (condition is null)
        {
            condition = Branching.OnStarts(model, relaxed, out value);
            if (condition is null)
            {
                Keep(WholeFlow.Split(model, relaxed));
                return;
            }
            Dive(node.Problem, relaxed);
        }
        else if (Nodes % DiveEvery == 1)
            Dive(node.Problem, relaxed);
        if (bound >= Upper)
            return;

        var floor = (long)Math.Floor(value);
        Branch(floor + 1, Limit.None);
        Branch(0, floor);

        void Branch(long least, long most)
        {
            var limits = Branching.Tighten(node.Problem.Limits, condition.Value, least, most);
            Push(new(node.Problem with { Limits = limits }, bound, node.Depth + 1, relaxed.End));
        }
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
            else
                Take(relaxed.Strips.MaxBy(strip => strip.Times).Pattern, 1);
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
            relaxed = relaxation.Solve(problem, Upper, relaxed.End);
            if (relaxed.Outcome != Relaxed.Kind.Solved)
                return;
        }

        void Take(StripPattern pattern, long times)
        {
            taken.Add((pattern, times));
            problem = problem.After(model, pattern, times);
        }
    }

    private void Keep(ImmutableArray<(StripPattern Pattern, long Times)> strips)
    {
        var total = strips.Sum(strip => strip.Times * strip.Pattern.Cost);
        if (total >= Upper)
            return;
        Upper = total;
        Best = strips;
    }
}
