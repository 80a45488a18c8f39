using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>Makes a plan easier to follow without making it longer: two layouts of strips are replaced by one, three of
/// one height by two, as long as that is possible (after Foerster and Wäscher, "Pattern reduction in one-dimensional
/// cutting stock problems", International Journal of Production Research 38, 2000).</summary>
internal sealed class FewerLayouts
{
    private readonly StripModel model;
    private readonly long budget;
    private readonly List<(StripPattern Pattern, long Times)> layouts;

    /// <summary>Room to note how often each placement is cut.</summary>
    private readonly int[] copies;

    public FewerLayouts(
        StripModel model,
        ImmutableArray<(StripPattern Pattern, long Times)> strips,
        long budget
    )
    {
        this.model = model;
        this.budget = budget;
        copies = new int[model.Placements.Length];
        layouts =
        [
            .. strips
                .GroupBy(strip => strip.Pattern)
                .Select(group => (group.Key, group.Sum(strip => strip.Times))),
        ];
    }

    public long Work { get; private set; }

    public ImmutableArray<(StripPattern Pattern, long Times)> Find()
    {
        while (Work < budget && (MergePairs() || MergeTriples())) { }
        return [.. layouts];
    }

    private bool MergePairs()
    {
        for (var a = 0; a < layouts.Count; a++)
        for (var b = a + 1; b < layouts.Count && Work < budget; b++)
        {
            if (IsFromRemainder(a) || IsFromRemainder(b))
                continue;
            var length = Length(a) + Length(b);
            var wanted = Wanted(a, b);
            foreach (var height in model.Heights)
            {
                var times = length / height;
                if (times > 0 && OneLayout(wanted, height, times, a, b) is { } merged)
                {
                    Replace([a, b], [(merged, Needed(merged, wanted))]);
                    return true;
                }
            }
        }
        return false;
    }

    private bool MergeTriples()
    {
        for (var a = 0; a < layouts.Count; a++)
        for (var b = a + 1; b < layouts.Count; b++)
        for (var c = b + 1; c < layouts.Count && Work < budget; c++)
        {
            var height = Height(a);
            if (Height(b) != height || Height(c) != height)
                continue;
            if (IsFromRemainder(a) || IsFromRemainder(b) || IsFromRemainder(c))
                continue;
            var wanted = Wanted(a, b, c);
            var times = layouts[a].Times + layouts[b].Times + layouts[c].Times;
            for (var first = 1L; first <= times / 2 && Work < budget; first++)
                if (TwoLayouts(wanted, height, first, times - first, [a, b, c]) is { } two)
                {
                    Replace([a, b, c], two);
                    return true;
                }
        }
        return false;
    }

    private bool IsFromRemainder(int layout) =>
        model.Families[layouts[layout].Pattern.Family].From >= 0;

    private long Length(int layout) => layouts[layout].Pattern.Cost * layouts[layout].Times;

    private long Height(int layout) => model.Families[layouts[layout].Pattern.Family].Height;

    /// <summary>What only these layouts make of what is asked for.</summary>
    private long[] Wanted(params int[] of)
    {
        var wanted = (long[])model.Demand.Clone();
        for (var i = 0; i < layouts.Count; i++)
            if (!of.Contains(i))
                foreach (var placement in layouts[i].Pattern.Placements)
                {
                    var kind = model.Placements[placement].Kind;
                    wanted[kind] -= layouts[i].Times * layouts[i].Pattern.CopiesOf(placement);
                }
        for (var kind = 0; kind < wanted.Length; kind++)
            wanted[kind] = Math.Max(0, wanted[kind]);
        Work += layouts.Count * 4L;
        return wanted;
    }

    private static long Needed(StripPattern pattern, long[] wanted)
    {
        long times = 0;
        for (var kind = 0; kind < wanted.Length; kind++)
            if (wanted[kind] > 0)
                times = Math.Max(
                    times,
                    (wanted[kind] + pattern.Yield(kind) - 1) / pattern.Yield(kind)
                );
        return times;
    }

    private StripPattern? OneLayout(long[] wanted, long height, long times, params int[] replaced)
    {
        Work += model.Families.Length + wanted.Length;
        foreach (var family in Families(height, times, replaced))
        {
            var room = (long)model.Runs[model.Families[family].Run].Width;
            Array.Clear(copies);
            var any = false;
            for (var kind = 0; kind < wanted.Length && room >= 0; kind++)
            {
                if (wanted[kind] == 0)
                    continue;
                var placement = Narrowest(kind, family);
                var count = (wanted[kind] + times - 1) / times;
                room -=
                    placement < 0 ? long.MaxValue / 2 : count * model.Placements[placement].Width;
                if (room >= 0)
                {
                    copies[placement] = (int)count;
                    any = true;
                }
            }
            if (room >= 0 && any)
                return Pattern(family, copies);
        }
        return null;
    }

    /// <summary>Two layouts of one height, cut so many times each, by dynamic programming: for every length of the first
    /// the least length of the second.</summary>
    private List<(StripPattern, long)>? TwoLayouts(
        long[] wanted,
        long height,
        long first,
        long second,
        int[] replaced
    )
    {
        foreach (var one in Families(height, first, replaced))
        foreach (var other in Families(height, second, replaced))
        {
            if (
                model.Families[one].Cap != Limit.None
                && model.Families[other].Cap != Limit.None
                && first + second > 1
                && !Families(height, first + second, replaced).Contains(one)
            )
                continue;
            var width = model.Runs[model.Families[one].Run].Width;
            var kinds = Enumerable
                .Range(0, wanted.Length)
                .Where(kind => wanted[kind] > 0)
                .ToArray();
            var least = new long[kinds.Length + 1][];
            var choice = new int[kinds.Length][];
            least[0] = [0, .. Enumerable.Repeat(long.MaxValue, width)];
            for (var i = 0; i < kinds.Length; i++)
            {
                least[i + 1] = [.. Enumerable.Repeat(long.MaxValue, width + 1)];
                choice[i] = new int[width + 1];
                var (a, b) = (Narrowest(kinds[i], one), Narrowest(kinds[i], other));
                var step = a < 0 ? width + 1 : model.Placements[a].Width;
                var most = Math.Min((wanted[kinds[i]] + first - 1) / first, width / step);
                for (var count = 0; count <= most; count++)
                {
                    var rest = Math.Max(0, wanted[kinds[i]] - first * count);
                    var there = (rest + second - 1) / second;
                    if (there > 0 && b < 0)
                        continue;
                    var length = there == 0 ? 0 : there * model.Placements[b].Width;
                    if (length > width)
                        continue;
                    for (var at = count * step; at <= width; at++)
                    {
                        var before = least[i][at - count * step];
                        if (before == long.MaxValue || before + length > width)
                            continue;
                        if (before + length >= least[i + 1][at])
                            continue;
                        least[i + 1][at] = before + length;
                        choice[i][at] = count;
                    }
                    Work += width;
                }
            }
            var end = Array.FindIndex(least[kinds.Length], length => length != long.MaxValue);
            if (end < 0)
                continue;
            var left = new int[model.Placements.Length];
            var right = new int[model.Placements.Length];
            for (var i = kinds.Length - 1; i >= 0; i--)
            {
                var count = choice[i][end];
                if (count > 0)
                    left[Narrowest(kinds[i], one)] = count;
                var rest = Math.Max(0, wanted[kinds[i]] - first * count);
                if (rest > 0)
                    right[Narrowest(kinds[i], other)] = (int)((rest + second - 1) / second);
                if (count > 0)
                    end -= count * model.Placements[Narrowest(kinds[i], one)].Width;
            }
            var two = new List<(StripPattern, long)>();
            if (left.AsSpan().ContainsAnyExcept(0))
                two.Add((Pattern(one, left), first));
            if (right.AsSpan().ContainsAnyExcept(0))
                two.Add((Pattern(other, right), second));
            return two;
        }
        return null;
    }

    private StripPattern Pattern(int family, int[] copiesOf)
    {
        var placements = new List<int>();
        var times = new List<int>();
        for (var i = 0; i < copiesOf.Length; i++)
            if (copiesOf[i] > 0)
            {
                placements.Add(i);
                times.Add(copiesOf[i]);
            }
        return new(model, family, [.. placements], [.. times]);
    }

    /// <summary>Families of the height that may be cut so often, beside the layouts that stay.</summary>
    private IEnumerable<int> Families(long height, long times, int[] replaced)
    {
        for (var family = 0; family < model.Families.Length; family++)
        {
            if (model.Families[family].Height != height || model.Families[family].From >= 0)
                continue;
            if (model.Families[family].Cap == Limit.None || LeavesRoom(family))
                yield return family;
        }

        // Beside the layouts that stay, in every group of tall strips that the family belongs to.
        bool LeavesRoom(int family)
        {
            foreach (var group in model.Families)
            {
                if (group.Cap == Limit.None || group.Height > model.Families[family].Height)
                    continue;
                var tally = new Tally.Mixed(group.Height);
                var used = times;
                for (var i = 0; i < layouts.Count; i++)
                    if (!replaced.Contains(i))
                        used += layouts[i].Times * tally.OfFamily(model, layouts[i].Pattern.Family);
                if (used > group.Cap)
                    return false;
            }
            return true;
        }
    }

    /// <summary>The placement of the kind that takes the least of a strip of the family; -1 if none fits.</summary>
    private int Narrowest(int kind, int family)
    {
        var best = -1;
        var run = model.Runs[model.Families[family].Run];
        for (var i = model.Families[family].First; i < run.End; i++)
            if (
                model.Placements[i].Kind == kind
                && (best < 0 || model.Placements[i].Width < model.Placements[best].Width)
            )
                best = i;
        return best;
    }

    private void Replace(int[] old, List<(StripPattern Pattern, long Times)> by)
    {
        for (var i = old.Length - 1; i >= 0; i--)
            layouts.RemoveAt(old[i]);
        foreach (var (pattern, times) in by)
        {
            var known = layouts.FindIndex(layout => layout.Pattern.Equals(pattern));
            if (known < 0)
                layouts.Add((pattern, times));
            else
                layouts[known] = (pattern, layouts[known].Times + times);
        }
    }
}
