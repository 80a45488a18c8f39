namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>Branch and bound over fractional plans of panels: on how many panels are cut each way, then on numbers of strips by
/// height, then on pieces in strips of a height. What still does not come out whole keeps its bound.</summary>
internal sealed class PanelSearch
{
    private const int DiveEvery = 6;

    private readonly PanelModel model;
    private readonly long budget;
    private readonly PanelRelaxation relaxation;
    private readonly PriorityQueue<Node, (long Bound, int Depth, int Serial)> open = new();
    private int serial;
    private int nodes;
    private long abandoned = long.MaxValue;

    private sealed record Node(PanelLimit[] Limits, long Bound, int Depth);

    public PanelSearch(PanelModel model, List<CutPanel> byHand, long budget)
    {
        this.model = model;
        this.budget = budget;
        Best = byHand;
        Upper = PanelsByHand.Count(byHand);
        relaxation = new(model);
        relaxation.Learn(byHand);
        // Every kind by itself, so that whatever is left can be made.
        for (var kind = 0; kind < model.Demand.Length; kind++)
        {
            var only = new long[model.Demand.Length];
            only[kind] = model.Demand[kind];
            relaxation.Learn(PanelsByHand.Of(model, only));
        }
        Lower = model.AreaBound;
    }

    public List<CutPanel> Best { get; private set; }

    public long Upper { get; private set; }

    public long Lower { get; private set; }

    public long Work => relaxation.Work;

    public void Run()
    {
        open.Enqueue(new([], Lower, 0), (Lower, 0, serial++));
        while (open.TryPeek(out var node, out var key))
        {
            Lower = Math.Min(Upper, Math.Max(Lower, Math.Min(key.Bound, abandoned)));
            if (Lower >= Upper || Work > budget)
                return;
            open.Dequeue();
            Expand(node);
        }
        Lower = Math.Max(Lower, Math.Min(Upper, abandoned));
    }

    private void Expand(Node node)
    {
        nodes++;
        var relaxed = relaxation.Solve(model.Demand, node.Limits, Upper);
        if (relaxed.Outcome == PanelRelaxed.Kind.Pruned)
            return;
        var bound = Math.Max(node.Bound, relaxed.Bound);
        if (relaxed.Outcome == PanelRelaxed.Kind.Failed)
        {
            abandoned = Math.Min(abandoned, bound);
            return;
        }
        if (nodes % DiveEvery == 1)
            Dive(relaxed);
        if (bound >= Upper)
            return;
        if (Choose(relaxed, out var value) is not { } limit)
        {
            Assemble(relaxed);
            if (bound < Upper)
                Dive(relaxed);
            if (bound < Upper)
                abandoned = Math.Min(abandoned, bound);
            return;
        }
        var floor = (long)Math.Floor(value);
        Push(limit with { Least = floor + 1, Most = Limit.None });
        Push(limit with { Least = 0, Most = floor });

        void Push(PanelLimit more) =>
            open.Enqueue(
                new(Tightened(node.Limits, more), bound, node.Depth + 1),
                (bound, -node.Depth - 1, serial++)
            );
    }

    private static PanelLimit[] Tightened(PanelLimit[] limits, PanelLimit more)
    {
        var at = Array.FindIndex(limits, limit => limit.IsSame(more));
        if (at < 0)
            return [.. limits, more];
        var tightened = (PanelLimit[])limits.Clone();
        tightened[at] = more with
        {
            Least = Math.Max(more.Least, limits[at].Least),
            Most = Math.Min(more.Most, limits[at].Most),
        };
        return tightened;
    }

    private PanelLimit? Choose(PanelRelaxed relaxed, out double value)
    {
        PanelLimit? chosen = null;
        double best = 1e-5,
            at = 0;
        var sides = new double[model.Sides.Length];
        foreach (var (side, _, times) in relaxed.Panels)
            sides[side] += times;
        // With all panels cut one way their number needs no branching: it is what is minimized.
        if (sides.Count(side => side > 1e-6) > 1)
            for (var side = 0; side < sides.Length; side++)
                Consider(new(side, -1, -1, 0, Limit.None), sides[side]);
        for (var side = 0; side < sides.Length && chosen is null; side++)
        {
            double taller = 0;
            for (var height = 0; height < model.Sides[side].Heights.Length; height++)
            {
                foreach (var (strip, times) in relaxed.Strips)
                    if (strip.Side == side && strip.Height == height)
                        taller += times;
                Consider(new(side, height, -1, 0, Limit.None), taller);
            }
        }
        if (chosen is null)
        {
            var pieces = new Dictionary<(int, int, int), double>();
            foreach (var (strip, times) in relaxed.Strips)
                for (var lie = 0; lie < strip.Copies.Length; lie++)
                    if (strip.Copies[lie] > 0)
                    {
                        var key = (strip.Side, strip.Height, lie);
                        pieces[key] = pieces.GetValueOrDefault(key) + (times * strip.Copies[lie]);
                    }
            foreach (var ((side, height, lie), count) in pieces.OrderBy(piece => piece.Key))
                Consider(new(side, height, lie, 0, Limit.None), count);
        }
        value = at;
        return chosen;

        void Consider(PanelLimit limit, double count)
        {
            var off = Math.Abs(count - Math.Round(count));
            if (off <= best)
                return;
            (chosen, best, at) = (limit, off, count);
        }
    }

    /// <summary>Puts the plan together where numbers of panels, of strips and of pieces in strips of a height are whole, and only
    /// which go together is not.</summary>
    private void Assemble(PanelRelaxed relaxed)
    {
        var panels = new List<CutPanel>();
        for (var sideIndex = 0; sideIndex < model.Sides.Length; sideIndex++)
        {
            var side = model.Sides[sideIndex];
            double count = 0;
            foreach (var (of, _, times) in relaxed.Panels)
                count += of == sideIndex ? times : 0;
            var strips = new long[side.Heights.Length];
            var byHeight = new int[side.Heights.Length][][];
            for (var height = 0; height < strips.Length; height++)
            {
                double number = 0;
                var pieces = new double[side.Lies.Length];
                foreach (var (strip, times) in relaxed.Strips)
                {
                    if (strip.Side != sideIndex || strip.Height != height)
                        continue;
                    number += times;
                    for (var lie = 0; lie < pieces.Length; lie++)
                        pieces[lie] += times * strip.Copies[lie];
                }
                strips[height] = (long)Math.Round(number);
                if (
                    BinFill.Find(
                        [.. side.Lies.Select(lie => lie.Width)],
                        [.. pieces.Select(piece => (long)Math.Round(piece))],
                        strips[height],
                        side.Room
                    )
                    is not { } filled
                )
                    return;
                byHeight[height] = filled;
            }
            // A fraction of a panel is one.
            var stacked = BinFill.Find(
                side.Heights,
                strips,
                (long)Math.Ceiling(count - 1e-6),
                side.Extent
            );
            if (stacked is null)
                return;
            var next = new int[strips.Length];
            foreach (var stack in stacked)
            {
                var cut = new List<PanelStrip>();
                for (var height = 0; height < stack.Length; height++)
                for (var n = 0; n < stack[height]; n++)
                    cut.Add(new(sideIndex, height, byHeight[height][next[height]++]));
                if (cut.Count > 0)
                    panels.Add(new(sideIndex, 1, cut));
            }
        }
        if (IsWhole(panels))
            Keep(panels);
    }

    private bool IsWhole(List<CutPanel> panels)
    {
        var left = (long[])model.Demand.Clone();
        foreach (var panel in panels)
            PanelsByHand.Take(model, panel.Strips, panel.Times, left);
        return !Array.Exists(left, count => count > 0);
    }

    /// <summary>Cuts panel after panel as the fractional plan would, solving again in between.</summary>
    private void Dive(PanelRelaxed relaxed)
    {
        var left = (long[])model.Demand.Clone();
        var panels = new List<CutPanel>();
        long taken = 0;
        while (relaxed.Panels.Count > 0)
        {
            var (side, template, share) = relaxed.Panels.MaxBy(panel => panel.Times);
            var strips = Filled(side, template, relaxed.KindPrices, left);
            if (strips.Count == 0)
                return;
            var times = Math.Min(
                PanelsByHand.Times(model, strips, left),
                Math.Max(1, (long)Math.Floor(share + 1e-6))
            );
            PanelsByHand.Take(model, strips, times, left);
            panels.Add(new(side, times, strips));
            taken += times;
            if (taken >= Upper)
                return;
            if (!Array.Exists(left, count => count > 0))
            {
                Keep(panels);
                return;
            }
            var rest = PanelsByHand.Of(model, left);
            if (taken + PanelsByHand.Count(rest) < Upper)
                Keep([.. panels, .. rest]);
            relaxed = relaxation.Solve(left, [], Upper - taken);
            if (relaxed.Outcome != PanelRelaxed.Kind.Solved)
                return;
        }
    }

    /// <summary>Strips for the places of a panel, tallest first, each the best of what is left to make; then for what is left of
    /// the panel.</summary>
    private List<PanelStrip> Filled(int sideIndex, int[] template, double[] each, long[] demand)
    {
        var side = model.Sides[sideIndex];
        var left = (long[])demand.Clone();
        var prices = new PanelPrices(model);
        foreach (var lie in side.Lies)
        {
            // What is worth nothing is still worth its area where there is room for it.
            var area = (double)lie.Width * lie.Height / side.Room / side.Extent;
            prices.Kind[lie.Kind] = (long)((each[lie.Kind] + (area / 1024)) * (1L << 30)) + 1;
        }
        var strips = new List<PanelStrip>();
        var free = side.Extent;
        for (var height = 0; height < template.Length; height++)
        for (var place = 0; place < template[height]; place++)
        {
            relaxation.Pricer.Price(prices, left);
            var strip = relaxation.Pricer.Strip(sideIndex, height);
            // In a strip the two ways of lying of a kind are told apart, so together they may make too much.
            Trim(side, strip, left);
            if (!Array.Exists(strip.Copies, count => count > 0))
                continue;
            strips.Add(strip);
            free -= side.Heights[height];
        }
        PanelsByHand.Fill(model, sideIndex, left, free, strips);
        return strips;
    }

    /// <summary>Takes pieces out that are not needed, and the others off what is left.</summary>
    private static void Trim(PanelSide side, PanelStrip strip, long[] left)
    {
        for (var lie = 0; lie < strip.Copies.Length; lie++)
        {
            var kind = side.Lies[lie].Kind;
            strip.Copies[lie] = (int)Math.Min(strip.Copies[lie], left[kind]);
            left[kind] -= strip.Copies[lie];
        }
    }

    private void Keep(List<CutPanel> panels)
    {
        var count = PanelsByHand.Count(panels);
        if (count >= Upper)
            return;
        Upper = count;
        Best = [.. panels];
    }
}
