namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>Finds for every family the strip whose pieces are worth most at given prices: a bounded knapsack by dynamic
/// programming over positions, one sweep from the shortest placement to the tallest serving all families of a run.
/// </summary>
internal sealed class PatternPricer
{
    /// <summary>Most cells to keep choices for: 80 MB.</summary>
    private const long Cells = 20_000_000;

    private readonly StripModel model;

    /// <summary>Copies chosen per placement and position: one table for each run, then one for each family that had
    /// prices of its own.</summary>
    private readonly int[][] choice;
    private readonly int[] table;
    private readonly long[] worth;
    private long[] now;
    private long[] next;
    private readonly long[] extra;
    private readonly int[] most;

    public PatternPricer(StripModel model)
    {
        this.model = model;
        choice = new int[model.Runs.Length + model.Families.Length][];
        table = new int[model.Families.Length];
        worth = new long[model.Families.Length];
        var width = model.Runs.Max(run => run.Width);
        now = new long[width + 1];
        next = new long[width + 1];
        extra = new long[width + 1];
        most = new int[model.Placements.Length];
    }

    /// <summary>Whether the choices at every position of every placement fit in memory. They do unless widths of tens of
    /// thousands of units share no common measure.</summary>
    public static bool CanSearch(StripModel model) =>
        model.Runs.Sum(run => (long)(run.End - run.First) * (run.Width + 1)) <= Cells;

    /// <summary>Cells visited so far, for the count of work done.</summary>
    public long Work { get; private set; }

    /// <summary>What the best strip of the family is worth, the family's own price included.</summary>
    public long Worth(int family) => worth[family];

    /// <param name="demand">A strip holds no more of a kind than this.</param>
    public void Price(Prices prices, ReadOnlySpan<long> demand)
    {
        for (var i = 0; i < most.Length; i++)
        {
            var placement = model.Placements[i];
            most[i] = (int)Math.Min(demand[placement.Kind], int.MaxValue);
        }
        for (var run = 0; run < model.Runs.Length; run++)
            Sweep(run, model.Runs[run].First, run, prices, null);
        for (var family = 0; family < model.Families.Length; family++)
        {
            table[family] = model.Families[family].Run;
            if (!prices.Pieces.TryGetValue(family, out var pieces))
                continue;
            table[family] = model.Runs.Length + family;
            Sweep(
                model.Families[family].Run,
                model.Families[family].First,
                table[family],
                prices,
                pieces
            );
            worth[family] = next[0] + prices.Family[family];
        }
    }

    /// <summary>The strip behind <see cref="Worth"/>, of the last prices.</summary>
    public StripPattern Pattern(int family)
    {
        var run = model.Runs[model.Families[family].Run];
        var placements = new List<int>();
        var copies = new List<int>();
        var at = 0;
        for (var i = model.Families[family].First; i < run.End; i++)
        {
            var count = choice[table[family]][(i - run.First) * (run.Width + 1) + at];
            if (count == 0)
                continue;
            placements.Add(i);
            copies.Add(count);
            at += count * model.Placements[i].Width;
        }
        return new(model, family, [.. placements], [.. copies]);
    }

    /// <summary>next[p] is the most that the placements behind the current one are worth when they begin at position p.
    /// </summary>
    /// <param name="pieces">Prices of one family beside the common ones.</param>
    private void Sweep(
        int runIndex,
        int first,
        int tableIndex,
        Prices prices,
        Dictionary<int, long>? pieces
    )
    {
        var run = model.Runs[runIndex];
        var width = run.Width;
        var choices = choice[tableIndex] ??= new int[(run.End - run.First) * (width + 1)];
        Array.Clear(next, 0, width + 1);
        for (var i = run.End - 1; i >= first; i--)
        {
            var placement = model.Placements[i];
            var price = prices.Kind[placement.Kind] + (pieces?.GetValueOrDefault(i) ?? 0);
            var step = placement.Width;
            var counts = choices.AsSpan((i - run.First) * (width + 1), width + 1);
            var fits = Math.Min(most[i], width / step);
            counts.Clear();
            if (prices.Starts.TryGetValue((runIndex, i), out var starts) && fits > 0)
                Special(starts, price, step, fits, width, counts);
            else if (price > 0 && fits > 0)
            {
                if (fits == width / step)
                    Unbounded(price, step, width, counts);
                else
                    Bounded(price, step, fits, width, counts);
                (now, next) = (next, now);
            }
            if (pieces is not null)
                continue;
            for (var family = 0; family < model.Families.Length; family++)
                if (model.Families[family].Run == runIndex && model.Families[family].First == i)
                    worth[family] = next[0] + prices.Family[family];
        }
        Work += (long)(run.End - first) * width;
    }

    private void Unbounded(long price, int step, int width, Span<int> counts)
    {
        var (now, next) = (this.now, this.next);
        for (var at = width; at >= 0; at--)
        {
            now[at] = next[at];
            if (at + step <= width && now[at + step] + price > now[at])
            {
                now[at] = now[at + step] + price;
                counts[at] = counts[at + step] + 1;
            }
        }
    }

    private void Bounded(long price, int step, int fits, int width, Span<int> counts)
    {
        var (now, next) = (this.now, this.next);
        Array.Copy(next, now, width + 1);
        for (var count = 1; count <= fits; count++)
        {
            var shift = count * step;
            var gain = count * price;
            for (var at = 0; at + shift <= width; at++)
            {
                var sum = next[at + shift] + gain;
                if (sum <= now[at])
                    continue;
                now[at] = sum;
                counts[at] = count;
            }
            Work += width - shift;
        }
    }

    private void Special(
        List<(int Position, long Price)> starts,
        long price,
        int step,
        int fits,
        int width,
        Span<int> counts
    )
    {
        Array.Clear(extra, 0, width + 1);
        foreach (var start in starts)
            extra[start.Position] += start.Price;
        for (var at = 0; at <= width; at++)
        {
            var best = next[at];
            long gain = 0;
            for (
                int count = 1, from = at;
                count <= fits && from + step <= width;
                count++, from += step
            )
            {
                gain += price + extra[from];
                if (next[from + step] + gain <= best)
                    continue;
                best = next[from + step] + gain;
                counts[at] = count;
            }
            now[at] = best;
        }
        Work += (long)fits * width;
        (now, next) = (next, now);
    }
}
