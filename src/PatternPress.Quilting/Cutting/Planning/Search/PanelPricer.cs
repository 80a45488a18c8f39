namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>What strips and whole panels are worth at given prices of pieces: for each side a bounded knapsack of pieces along
/// the strip, then one of strips across the panel.</summary>
internal sealed class PanelPricer
{
    /// <summary>Most cells to keep choices for.</summary>
    private const long Cells = 20_000_000;

    private readonly PanelModel model;
    private readonly int[][] choice;
    private readonly int[][] stripChoice;
    private readonly long[][] panel;
    private readonly Dictionary<(int Side, int Height), int[]> own = [];
    private long[] now;
    private long[] next;

    public PanelPricer(PanelModel model)
    {
        this.model = model;
        choice = [.. model.Sides.Select(side => new int[side.Lies.Length * (side.Room + 1)])];
        stripChoice = [.. model.Sides.Select(side => new int[side.Extent + 1])];
        panel = [.. model.Sides.Select(side => new long[side.Extent + 1])];
        Worth = [.. model.Sides.Select(side => new long[side.Heights.Length])];
        var room = model.Sides.Max(side => side.Room);
        now = new long[room + 1];
        next = new long[room + 1];
    }

    /// <summary>Whether all choices fit in memory.</summary>
    public static bool CanSearch(PanelModel model)
    {
        long cells = 0;
        foreach (var side in model.Sides)
            cells += ((side.Lies.Length + 2L) * (side.Room + 1L)) + (3L * side.Extent);
        return cells <= Cells;
    }

    /// <summary>Cells visited so far, for the count of work done.</summary>
    public long Work { get; private set; }

    /// <summary>What the best strip of each side and height is worth.</summary>
    public long[][] Worth { get; }

    /// <summary>What the best panel of the side is worth.</summary>
    public long Panel(int side) => panel[side][^1];

    /// <param name="demand">A strip holds no more of a kind in one way of lying than this.</param>
    public void Price(PanelPrices prices, ReadOnlySpan<long> demand)
    {
        own.Clear();
        for (var side = 0; side < model.Sides.Length; side++)
        {
            Sweep(side, 0, prices.Kind, null, demand, choice[side], Worth[side]);
            for (var height = 0; height < Worth[side].Length; height++)
            {
                if (prices.Pieces.TryGetValue((side, height), out var extra))
                {
                    var first = model.Sides[side].First(height);
                    var table = new int[
                        model.Sides[side].Lies.Length * (model.Sides[side].Room + 1)
                    ];
                    Sweep(side, first, prices.Kind, extra, demand, table, null);
                    Worth[side][height] = next[0];
                    own.Add((side, height), table);
                }
                Worth[side][height] += prices.Family[side][height];
            }
            Stack(side, prices.Side[side]);
        }
    }

    /// <summary>The best strip, as priced last.</summary>
    public PanelStrip Strip(int sideIndex, int height)
    {
        var side = model.Sides[sideIndex];
        var table = own.GetValueOrDefault((sideIndex, height)) ?? choice[sideIndex];
        var copies = new int[side.Lies.Length];
        var at = 0;
        for (var lie = side.First(height); lie < side.Lies.Length; lie++)
        {
            copies[lie] = table[(lie * (side.Room + 1)) + at];
            at += copies[lie] * side.Lies[lie].Width;
        }
        return new(sideIndex, height, copies);
    }

    /// <summary>How many strips of each height the best panel of the side has.</summary>
    public int[] Template(int side)
    {
        var counts = new int[model.Sides[side].Heights.Length];
        for (var at = model.Sides[side].Extent; at > 0; )
        {
            var height = stripChoice[side][at];
            if (height < 0)
            {
                at--;
                continue;
            }
            counts[height]++;
            at -= model.Sides[side].Heights[height];
        }
        return counts;
    }

    private void Stack(int sideIndex, long constant)
    {
        var side = model.Sides[sideIndex];
        var best = panel[sideIndex];
        best[0] = constant;
        for (var at = 1; at <= side.Extent; at++)
        {
            best[at] = best[at - 1];
            stripChoice[sideIndex][at] = -1;
            for (var height = 0; height < side.Heights.Length; height++)
            {
                var high = side.Heights[height];
                if (high > at || best[at - high] + Worth[sideIndex][height] <= best[at])
                    continue;
                best[at] = best[at - high] + Worth[sideIndex][height];
                stripChoice[sideIndex][at] = height;
            }
        }
        Work += side.Extent * (long)side.Heights.Length;
    }

    private void Sweep(
        int sideIndex,
        int first,
        long[] price,
        Dictionary<int, long>? extra,
        ReadOnlySpan<long> demand,
        int[] choices,
        long[]? worth
    )
    {
        var side = model.Sides[sideIndex];
        var room = side.Room;
        Array.Clear(next, 0, room + 1);
        var height = side.Heights.Length - 1;
        for (var lie = side.Lies.Length - 1; lie >= first; lie--)
        {
            var of = side.Lies[lie];
            // The strips of a height are known when all that is no taller has been looked at.
            for (; worth is not null && side.Heights[height] < of.Height; height--)
                worth[height] = next[0];
            var counts = choices.AsSpan(lie * (room + 1), room + 1);
            counts.Clear();
            var each = price[of.Kind] + (extra?.GetValueOrDefault(lie) ?? 0);
            var fits = (int)Math.Min(demand[of.Kind], room / of.Width);
            if (each <= 0 || fits == 0)
                continue;
            Array.Copy(next, now, room + 1);
            for (var count = 1; count <= fits; count++)
            {
                var shift = count * of.Width;
                for (var at = 0; at + shift <= room; at++)
                {
                    var sum = next[at + shift] + (count * each);
                    if (sum <= now[at])
                        continue;
                    now[at] = sum;
                    counts[at] = count;
                }
                Work += room - shift + 1;
            }
            (now, next) = (next, now);
        }
        for (; worth is not null && height >= 0; height--)
            worth[height] = next[0];
        Work += room;
    }
}

/// <summary>Whole-number prices, as multiples of 2 to the power of minus <see cref="ScaleBits"/>.</summary>
internal sealed class PanelPrices(PanelModel model)
{
    public long[] Kind { get; } = new long[model.Demand.Length];

    /// <summary>Of every panel of the side.</summary>
    public long[] Side { get; } = new long[model.Sides.Length];

    /// <summary>Of every strip of the side and height.</summary>
    public long[][] Family { get; } =
    [.. model.Sides.Select(side => new long[side.Heights.Length])];

    /// <summary>What pieces of a lie are worth besides, in strips of one side and height.</summary>
    public Dictionary<(int Side, int Height), Dictionary<int, long>> Pieces { get; } = [];

    public int ScaleBits { get; set; }
}
