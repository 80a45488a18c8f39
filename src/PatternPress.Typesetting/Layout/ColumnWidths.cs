using System.Collections.Immutable;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Typesetting.Layout;

/// <summary>Divides a width among columns.</summary>
static class ColumnWidths
{
    /// <summary>
    /// Fixed columns get theirs. Natural ones get what they want, or, where that is too much, the widest of them give
    /// way until all fit, none below what it needs. Sharing ones divide the rest, each at least what it needs if that can be had.
    /// </summary>
    public static ImmutableArray<Points> Resolve(
        ImmutableArray<ColumnWidth> columns,
        ImmutableArray<WidthRange> needs,
        Points available
    )
    {
        var widths = new Points[columns.Length];
        var left = available;
        for (var i = 0; i < columns.Length; i++)
        {
            if (columns[i] is ColumnWidth.Fixed { Width: var width })
            {
                widths[i] = width;
                left -= width;
            }
        }

        var natural = Indices<ColumnWidth.Natural>(columns);
        var shares = Indices<ColumnWidth.Share>(columns);
        var room = left - shares.Select(i => needs[i].Least).Sum();
        var (least, wanted) = (
            natural.Select(i => needs[i].Least).Sum(),
            natural.Select(i => needs[i].Natural).Sum()
        );
        var cap = wanted <= room ? Points.Unlimited : Cap(needs, natural, Points.Max(room, least));
        foreach (var i in natural)
        {
            widths[i] = Points.Max(needs[i].Least, Points.Min(needs[i].Natural, cap));
            left -= widths[i];
        }

        Share(columns, needs, widths, shares, left);
        return [.. widths];
    }

    // The width that the widest columns are brought down to, so that all together take no more than there is: alike columns
    // come out alike, and narrow ones keep what they want.
    static Points Cap(ImmutableArray<WidthRange> needs, List<int> natural, Points room)
    {
        var (low, high) = (0L, room.Thousandths);
        while (low < high)
        {
            var middle = low + ((high - low + 1) / 2);
            var cap = new Points(middle);
            var taken = natural
                .Select(i => Points.Max(needs[i].Least, Points.Min(needs[i].Natural, cap)))
                .Sum();
            (low, high) = taken <= room ? (middle, high) : (low, middle - 1);
        }

        return new Points(low);
    }

    // A column whose part would be less than it needs gets what it needs, and the others divide what remains.
    static void Share(
        ImmutableArray<ColumnWidth> columns,
        ImmutableArray<WidthRange> needs,
        Points[] widths,
        List<int> shares,
        Points left
    )
    {
        var open = new List<int>(shares);
        while (open.Count > 0)
        {
            var parts = open.Sum(Parts);
            var needy = open.Find(i => left * Parts(i) / parts < needs[i].Least);
            if (open.Count == 1 || !open.Exists(i => left * Parts(i) / parts < needs[i].Least))
            {
                foreach (var i in open)
                {
                    var part = left * Parts(i) / parts;
                    widths[i] = Points.Max(Points.Zero, part);
                    (left, parts) = (left - part, parts - Parts(i));
                }

                return;
            }

            widths[needy] = needs[needy].Least;
            left -= widths[needy];
            open.Remove(needy);
        }

        int Parts(int i) => Math.Max(1, ((ColumnWidth.Share)columns[i]).Parts);
    }

    static List<int> Indices<T>(ImmutableArray<ColumnWidth> columns) =>
        [.. Enumerable.Range(0, columns.Length).Where(i => columns[i] is T)];
}
