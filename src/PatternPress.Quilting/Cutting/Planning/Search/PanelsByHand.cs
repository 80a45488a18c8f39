namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>Panels cut the way a cutter works by hand: all strips run one way, the tallest first, each filled with pieces of
/// its height, then with lower ones; as many panels alike as can be.</summary>
internal static class PanelsByHand
{
    /// <summary>The better of the two ways for what is left to make.</summary>
    public static List<CutPanel> Of(PanelModel model, long[] demand)
    {
        List<CutPanel>? best = null;
        for (var side = 0; side < model.Sides.Length; side++)
        {
            var panels = Of(model, demand, side);
            if (
                best is null
                || Count(panels) < Count(best)
                || (Count(panels) == Count(best) && panels.Count < best.Count)
            )
                best = panels;
        }
        return best!;
    }

    public static long Count(List<CutPanel> panels) => panels.Sum(panel => panel.Times);

    private static List<CutPanel> Of(PanelModel model, long[] demand, int preferred)
    {
        var left = (long[])demand.Clone();
        var panels = new List<CutPanel>();
        while (Array.Exists(left, count => count > 0))
        {
            // What does not go in this way must be cut the other way.
            var side = preferred;
            var strips = Panel(model, side, left);
            if (strips.Count == 0)
            {
                side = 1 - preferred;
                strips = Panel(model, side, left);
            }
            var times = Times(model, strips, left);
            Take(model, strips, times, left);
            panels.Add(new(side, times, strips));
        }
        return panels;
    }

    /// <summary>How many panels can be cut so before one would make more than is left; at least one.</summary>
    public static long Times(PanelModel model, List<PanelStrip> strips, long[] left)
    {
        var made = Made(model, strips);
        var times = long.MaxValue;
        for (var kind = 0; kind < made.Length; kind++)
            if (made[kind] > 0)
                times = Math.Min(times, left[kind] / made[kind]);
        return Math.Max(1, times);
    }

    public static void Take(PanelModel model, List<PanelStrip> strips, long times, long[] left)
    {
        var made = Made(model, strips);
        for (var kind = 0; kind < made.Length; kind++)
            left[kind] = Math.Max(0, left[kind] - (times * made[kind]));
    }

    private static long[] Made(PanelModel model, List<PanelStrip> strips)
    {
        var made = new long[model.Demand.Length];
        foreach (var strip in strips)
            for (var lie = 0; lie < strip.Copies.Length; lie++)
                made[model.Sides[strip.Side].Lies[lie].Kind] += strip.Copies[lie];
        return made;
    }

    /// <summary>Strips of one panel.</summary>
    private static List<PanelStrip> Panel(PanelModel model, int sideIndex, long[] demand)
    {
        var side = model.Sides[sideIndex];
        var left = (long[])demand.Clone();
        var strips = new List<PanelStrip>();
        Fill(model, sideIndex, left, side.Extent, strips);
        return strips;
    }

    /// <summary>Adds strips while any fits what is left of a panel.</summary>
    public static void Fill(
        PanelModel model,
        int sideIndex,
        long[] left,
        int free,
        List<PanelStrip> strips
    )
    {
        var side = model.Sides[sideIndex];
        while (true)
        {
            // Every kind lies as flat as it can; the tallest of these that still fits leads.
            var leader = -1;
            var seen = new bool[left.Length];
            for (var lie = side.Lies.Length - 1; lie >= 0; lie--)
            {
                var kind = side.Lies[lie].Kind;
                if (left[kind] <= 0 || seen[kind] || side.Lies[lie].Height > free)
                    continue;
                seen[kind] = true;
                if (leader < 0 || side.Lies[lie].Height >= side.Lies[leader].Height)
                    leader = lie;
            }
            if (leader < 0)
                return;
            var height = Array.IndexOf(side.Heights, side.Lies[leader].Height);
            var copies = new int[side.Lies.Length];
            var room = side.Room;
            // The flat pieces of this height first, then whatever is longest and fits.
            for (var pass = 0; pass < 2; pass++)
            for (var lie = side.First(height); lie < side.Lies.Length; lie++)
            {
                var of = side.Lies[lie];
                if (pass == 0 && (of.Height != side.Heights[height] || !IsFlat(side, lie)))
                    continue;
                var count = (int)Math.Min(left[of.Kind], room / of.Width);
                copies[lie] += count;
                left[of.Kind] -= count;
                room -= count * of.Width;
            }
            strips.Add(new(sideIndex, height, copies));
            free -= side.Heights[height];
        }
    }

    private static bool IsFlat(PanelSide side, int lie)
    {
        foreach (var other in side.Lies)
            if (other.Kind == side.Lies[lie].Kind && other.Height < side.Lies[lie].Height)
                return false;
        return true;
    }
}
