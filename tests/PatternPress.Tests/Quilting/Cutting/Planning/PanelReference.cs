using PatternPress.Quilting.Cutting.Planning;

namespace PatternPress.Tests.Quilting.Cutting.Planning;

/// <summary>The fewest panels by trying every way of sorting a handful of single pieces: into strips, strips into panels,
/// panels into a plan. Feasible up to a dozen pieces.</summary>
internal static class PanelReference
{
    public static int Solve(PanelProblem problem)
    {
        CutPiece[] items =
        [
            .. problem.Pieces.SelectMany(piece => Enumerable.Repeat(piece, (int)piece.Count)),
        ];
        var all = (1 << items.Length) - 1;
        var fits = new bool[all + 1];
        foreach (var up in new[] { false, true })
        {
            var (room, extent) = up
                ? (problem.Height, problem.Width)
                : (problem.Width, problem.Height);
            var strip = new long[all + 1];
            for (var set = 1; set <= all; set++)
                strip[set] = StripHeight(set, up, room);
            var height = new long[all + 1];
            for (var set = 1; set <= all; set++)
            {
                height[set] = long.MaxValue;
                var lowest = set & -set;
                for (var part = set; part > 0; part = (part - 1) & set)
                    if (
                        (part & lowest) != 0
                        && strip[part] < long.MaxValue
                        && height[set & ~part] < long.MaxValue
                    )
                        height[set] = Math.Min(height[set], strip[part] + height[set & ~part]);
                fits[set] |= height[set] <= extent;
            }
        }
        var panels = new int[all + 1];
        for (var set = 1; set <= all; set++)
        {
            panels[set] = int.MaxValue;
            var lowest = set & -set;
            for (var part = set; part > 0; part = (part - 1) & set)
                if ((part & lowest) != 0 && fits[part] && panels[set & ~part] < int.MaxValue)
                    panels[set] = Math.Min(panels[set], 1 + panels[set & ~part]);
        }
        return panels[all];

        // The least height of one strip that holds the pieces: of the heights they can have, the least at which their
        // shortest lengths go in.
        long StripHeight(int set, bool up, long room)
        {
            foreach (
                var height in items.SelectMany(i => new[] { i.Width, i.Height }).Distinct().Order()
            )
            {
                long length = 0;
                for (var i = 0; i < items.Length && length <= room; i++)
                {
                    if ((set & (1 << i)) == 0)
                        continue;
                    var (along, across) = up
                        ? (items[i].Height, items[i].Width)
                        : (items[i].Width, items[i].Height);
                    var shortest = across <= height ? along : long.MaxValue;
                    if (items[i].Turnable && along <= height)
                        shortest = Math.Min(shortest, across);
                    length = shortest == long.MaxValue ? room + 1 : length + shortest;
                }
                if (length <= room)
                    return height;
            }
            return long.MaxValue;
        }
    }
}
