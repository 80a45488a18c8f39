namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>What a plan is narrowed down to: least and most of something counted.</summary>
/// <param name="Height">Strips of a side at least so tall, or of this height where pieces are counted; -1 for panels of the
/// side.</param>
/// <param name="Lie">Pieces that lie so in strips of that height; -1 for the strips.</param>
internal sealed record PanelLimit(int Side, int Height, int Lie, long Least, long Most)
{
    public bool IsSame(PanelLimit other) =>
        Side == other.Side && Height == other.Height && Lie == other.Lie;

    public int OfStrip(PanelStrip strip) =>
        Height < 0 || strip.Side != Side ? 0
        : Lie < 0 ? (strip.Height <= Height ? 1 : 0)
        : strip.Height == Height ? strip.Copies[Lie]
        : 0;

    public int OfPanel(int side) => Height < 0 && side == Side ? 1 : 0;
}

/// <summary>Answer to a problem whose strips and panels may be cut a fractional number of times.</summary>
/// <param name="Bound">Panels at least, proved in whole numbers.</param>
internal sealed record PanelRelaxed(
    PanelRelaxed.Kind Outcome,
    long Bound,
    List<(PanelStrip Strip, double Times)> Strips,
    List<(int Side, int[] Strips, double Times)> Panels,
    double[] KindPrices
)
{
    public enum Kind
    {
        Solved,

        /// <summary>No plan with fewer panels than the best is left: proved.</summary>
        Pruned,

        /// <summary>The linear program gave no usable answer; the bound still holds.</summary>
        Failed,
    }
}

/// <summary>Column generation over two kinds of columns: strips, which give pieces and take a place, and panels, which give
/// places for strips of certain heights (after Gilmore and Gomory, "Multistage cutting stock problems of two and more
/// dimensions", Operations Research 13, 1965). The bound is Lagrange's, computed in whole numbers from rounded prices, and holds
/// whatever the floating-point part did.</summary>
internal sealed class PanelRelaxation(PanelModel model)
{
    private readonly PanelPricer pricer = new(model);
    private readonly HashSet<PanelStrip> known = [];
    private readonly List<PanelStrip> strips = [];
    private readonly HashSet<PanelStrip> knownPanels = [];
    private readonly List<PanelStrip> panels = [];
    private long simplexWork;

    private const long ColumnWork = 60;

    public long Work => simplexWork + pricer.Work;

    public PanelPricer Pricer => pricer;

    /// <summary>Makes the columns of a whole plan known.</summary>
    public void Learn(IEnumerable<CutPanel> plan)
    {
        foreach (var panel in plan)
        {
            var counts = new int[model.Sides[panel.Side].Heights.Length];
            foreach (var strip in panel.Strips)
            {
                Add(strip);
                counts[strip.Height]++;
            }
            AddPanel(panel.Side, counts);
        }
    }

    private bool Add(PanelStrip strip)
    {
        if (!known.Add(strip))
            return false;
        strips.Add(strip);
        return true;
    }

    // A panel is kept like a strip: its side, and strips of each height.
    private bool AddPanel(int side, int[] counts)
    {
        var panel = new PanelStrip(side, -1, counts);
        if (!knownPanels.Add(panel))
            return false;
        panels.Add(panel);
        return true;
    }

    /// <param name="demand">Pieces of each kind still to be made.</param>
    /// <param name="cutoff">Only plans with fewer panels than this are of interest.</param>
    public PanelRelaxed Solve(long[] demand, IReadOnlyList<PanelLimit> limits, long cutoff)
    {
        var rowOfKind = new int[demand.Length];
        var rows = 0;
        for (var kind = 0; kind < demand.Length; kind++)
            rowOfKind[kind] = demand[kind] > 0 ? rows++ : -1;
        var firstSlot = new int[model.Sides.Length];
        for (var side = 0; side < model.Sides.Length; side++)
        {
            firstSlot[side] = rows;
            rows += model.Sides[side].Heights.Length;
        }
        var firstLimit = rows;
        rows += limits.Count;
        var lower = new double[rows];
        var upper = new double[rows];
        Array.Fill(upper, double.PositiveInfinity);
        for (var kind = 0; kind < demand.Length; kind++)
            if (rowOfKind[kind] >= 0)
                lower[rowOfKind[kind]] = demand[kind];
        for (var i = 0; i < limits.Count; i++)
        {
            lower[firstLimit + i] = limits[i].Least;
            if (limits[i].Most != Limit.None)
                upper[firstLimit + i] = limits[i].Most;
        }
        var simplex = new Simplex(lower, upper);
        var columns = new List<(bool IsPanel, PanelStrip Of)>();
        var usedStrips = 0;
        var usedPanels = 0;
        long bound = 0;
        while (true)
        {
            for (; usedStrips < strips.Count; usedStrips++)
                AddStripColumn(strips[usedStrips]);
            for (; usedPanels < panels.Count; usedPanels++)
                AddPanelColumn(panels[usedPanels]);
            var before = simplex.Work;
            var outcome = simplex.Solve();
            simplexWork += simplex.Work - before;
            if (outcome == Simplex.Outcome.Failed)
                return Answer(PanelRelaxed.Kind.Failed);
            var infeasible = outcome == Simplex.Outcome.Infeasible;
            var prices = Prices(
                simplex.Duals,
                rowOfKind,
                firstLimit,
                demand,
                limits,
                out var constant
            );
            pricer.Price(prices, demand);
            long best = 0;
            for (var side = 0; side < model.Sides.Length; side++)
                best = Math.Max(best, pricer.Panel(side));
            if (constant > WideSum.Product(best, Math.Max(0, cutoff - 1)))
                return new(PanelRelaxed.Kind.Pruned, cutoff, [], [], []);
            if (!infeasible && best > 0)
                bound = Math.Max(bound, constant.Over(WideSum.Of(best)));
            if (!Extend(simplex.Duals, firstSlot, prices, infeasible))
                return Answer(infeasible ? PanelRelaxed.Kind.Failed : PanelRelaxed.Kind.Solved);
        }

        void AddStripColumn(PanelStrip strip)
        {
            var side = model.Sides[strip.Side];
            var made = new double[rows];
            for (var lie = 0; lie < strip.Copies.Length; lie++)
            {
                var count = strip.Copies[lie];
                if (count == 0)
                    continue;
                var kind = side.Lies[lie].Kind;
                if (count > demand[kind])
                    return;
                made[rowOfKind[kind]] += count;
            }
            made[firstSlot[strip.Side] + strip.Height] = -1;
            for (var i = 0; i < limits.Count; i++)
                made[firstLimit + i] = limits[i].OfStrip(strip);
            AddColumn(made, 0, false, strip);
        }

        void AddPanelColumn(PanelStrip panel)
        {
            var made = new double[rows];
            for (var height = 0; height < panel.Copies.Length; height++)
                made[firstSlot[panel.Side] + height] = panel.Copies[height];
            for (var i = 0; i < limits.Count; i++)
                made[firstLimit + i] = limits[i].OfPanel(panel.Side);
            AddColumn(made, 1, true, panel);
        }

        void AddColumn(double[] made, double cost, bool isPanel, PanelStrip of)
        {
            var index = new List<int>();
            var value = new List<double>();
            for (var row = 0; row < rows; row++)
                if (made[row] != 0)
                {
                    index.Add(row);
                    value.Add(made[row]);
                }
            simplex.Add([.. index], [.. value], cost);
            columns.Add((isPanel, of));
            simplexWork += ColumnWork;
        }

        PanelRelaxed Answer(PanelRelaxed.Kind outcome)
        {
            var taken = new List<(PanelStrip, double)>();
            var cut = new List<(int, int[], double)>();
            var values = simplex.Values();
            for (var i = 0; i < values.Length; i++)
            {
                if (values[i] <= 1e-9)
                    continue;
                if (columns[i].IsPanel)
                    cut.Add((columns[i].Of.Side, columns[i].Of.Copies, values[i]));
                else
                    taken.Add((columns[i].Of, values[i]));
            }
            var each = new double[demand.Length];
            for (var kind = 0; kind < demand.Length; kind++)
                each[kind] = rowOfKind[kind] < 0 ? 0 : Math.Max(0, simplex.Duals[rowOfKind[kind]]);
            return new(outcome, bound, taken, cut, each);
        }
    }

    /// <summary>Adds the best panels with their strips, and the best strip for every place, where that pays.</summary>
    private bool Extend(
        ReadOnlySpan<double> duals,
        int[] firstSlot,
        PanelPrices prices,
        bool infeasible
    )
    {
        double scale = 1L << prices.ScaleBits;
        var pays = Math.Max(1e-7, 2 / scale);
        var added = false;
        for (var side = 0; side < model.Sides.Length; side++)
        {
            if ((pricer.Panel(side) / scale) - (infeasible ? 0 : 1) > pays)
            {
                var template = pricer.Template(side);
                added |= AddPanel(side, template);
                for (var height = 0; height < template.Length; height++)
                    if (template[height] > 0)
                        added |= Add(pricer.Strip(side, height));
            }
            for (var height = 0; height < model.Sides[side].Heights.Length; height++)
                if ((pricer.Worth[side][height] / scale) - duals[firstSlot[side] + height] > pays)
                    added |= Add(pricer.Strip(side, height));
        }
        return added;
    }

    private PanelPrices Prices(
        ReadOnlySpan<double> duals,
        int[] rowOfKind,
        int firstLimit,
        long[] demand,
        IReadOnlyList<PanelLimit> limits,
        out WideSum constant
    )
    {
        double largest = 1;
        for (var kind = 0; kind < demand.Length; kind++)
            if (rowOfKind[kind] >= 0)
                largest = Math.Max(largest, Math.Abs(duals[rowOfKind[kind]]));
        for (var i = 0; i < limits.Count; i++)
            largest = Math.Max(largest, Math.Abs(duals[firstLimit + i]));
        double pieces = 1;
        foreach (var side in model.Sides)
            pieces = Math.Max(
                pieces,
                (double)side.Room / side.Lies.Min(lie => lie.Width) * side.Extent / side.Heights[^1]
            );
        // A panel's worth is a sum of up to as many prices as pieces fit, each with as many limits as there are.
        var room = (double)(1L << 60) / ((pieces + 2) * (limits.Count + 2));
        var prices = new PanelPrices(model);
        while (prices.ScaleBits < 40 && largest * (1L << prices.ScaleBits) * 2 < room)
            prices.ScaleBits++;
        double scale = 1L << prices.ScaleBits;
        constant = WideSum.Zero;
        for (var kind = 0; kind < demand.Length; kind++)
        {
            if (rowOfKind[kind] < 0)
                continue;
            prices.Kind[kind] = Math.Max(0, (long)Math.Floor(duals[rowOfKind[kind]] * scale));
            constant += WideSum.Product(prices.Kind[kind], demand[kind]);
        }
        for (var i = 0; i < limits.Count; i++)
        {
            var limit = limits[i];
            var price = (long)Math.Floor(duals[firstLimit + i] * scale);
            if (price == 0 || (price < 0 && limit.Most == Limit.None))
                continue;
            constant += WideSum.Product(price, price > 0 ? limit.Least : limit.Most);
            if (limit.Height < 0)
                prices.Side[limit.Side] += price;
            else if (limit.Lie < 0)
                for (var height = 0; height <= limit.Height; height++)
                    prices.Family[limit.Side][height] += price;
            else
            {
                var key = (limit.Side, limit.Height);
                if (!prices.Pieces.TryGetValue(key, out var extra))
                    prices.Pieces[key] = extra = [];
                extra[limit.Lie] = extra.GetValueOrDefault(limit.Lie) + price;
            }
        }
        return prices;
    }
}
