namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>Whether things of given lengths go into so many bins of one length, and how: the longest first, each tried in every
/// bin that differs from those tried before.</summary>
internal static class BinFill
{
    /// <summary>More tries than this are not made; what is not found then is taken for impossible, which can only lose a plan and
    /// never a proof.</summary>
    private const int MostTries = 20_000;

    /// <param name="lengths">Of each kind of thing.</param>
    /// <param name="counts">How many of each.</param>
    /// <returns>Things of each kind in each bin; null if no way was found.</returns>
    public static int[][]? Find(int[] lengths, long[] counts, long bins, int room)
    {
        long things = 0;
        foreach (var count in counts)
            things += count;
        if (things > 1_000 || bins > 1_000)
            return null;
        var order = new List<int>();
        for (var kind = 0; kind < lengths.Length; kind++)
        for (long n = 0; n < counts[kind]; n++)
            order.Add(kind);
        order.Sort(
            (a, b) => lengths[a] != lengths[b] ? lengths[b].CompareTo(lengths[a]) : a.CompareTo(b)
        );
        var content = new int[bins][];
        for (var bin = 0; bin < bins; bin++)
            content[bin] = new int[lengths.Length];
        var free = new int[bins];
        Array.Fill(free, room);
        var tries = 0;
        return Place(0, 0) ? content : null;

        // Like things go into bins in order, so that no way is tried twice.
        bool Place(int at, int from)
        {
            if (at == order.Count)
                return true;
            var kind = order[at];
            for (var bin = from; bin < free.Length; bin++)
            {
                if (free[bin] < lengths[kind] || IsLikeEarlier(bin, from))
                    continue;
                if (++tries > MostTries)
                    return false;
                free[bin] -= lengths[kind];
                content[bin][kind]++;
                var alike = at + 1 < order.Count && order[at + 1] == kind;
                if (Place(at + 1, alike ? bin : 0))
                    return true;
                free[bin] += lengths[kind];
                content[bin][kind]--;
            }
            return false;
        }

        bool IsLikeEarlier(int bin, int from)
        {
            for (var other = from; other < bin; other++)
                if (free[other] == free[bin])
                    return true;
            return false;
        }
    }
}
