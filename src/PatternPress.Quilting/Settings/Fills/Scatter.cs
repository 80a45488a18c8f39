using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Settings.Fills;

/// <summary>
/// Spread by chance from a seed: no two edge neighbours alike, each coloring used equally often (counts differ by
/// one at most). Deals the colorings out at random, then swaps places until no neighbours match.
/// </summary>
public sealed class Scatter : FillPattern
{
    // Far above what any solvable layout in the tests needs (about two swaps a place), and still quick.
    private const int SwapsPerPlace = 400;

    public override FillKind Kind => FillKind.Scatter;

    public override string Keyword => "scatter";

    public override bool TrySpread(
        Fill fill,
        int rows,
        int columns,
        [NotNullWhen(true)] out FillCell[,]? cells,
        [NotNullWhen(false)] out string? problem
    )
    {
        FillCell[] list = [.. fill.Rows.SelectMany(row => row)];
        problem = null;
        if (list.Length == 2)
        {
            // Two colorings leave only one arrangement: a checkerboard, and chance picks which comes first.
            int first = (int)(new RandomSequence(fill.Seed).Next() & 1);
            cells = Spread(rows, columns, (r, c) => list[(r + c + first) % 2]);
            return true;
        }
        int[,]? dealt =
            list.Length == 1 && rows * columns > 1
                ? null
                : Deal(list.Length, rows, columns, fill.Seed);
        if (dealt is null)
        {
            cells = null;
            problem =
                $"{list.Length} coloring{(list.Length == 1 ? "" : "s")} cannot fill {columns} × {rows} places with no two neighbours alike";
            return false;
        }
        cells = Spread(rows, columns, (r, c) => list[dealt[r, c]]);
        return true;
    }

    private static int[,]? Deal(int kinds, int rows, int columns, int seed)
    {
        var random = new RandomSequence(seed);
        int places = rows * columns;
        int[] order = [.. Enumerable.Range(0, places).Select(i => i % kinds)];
        Shuffle(order, random);
        var dealt = new int[rows, columns];
        for (int i = 0; i < places; i++)
        {
            dealt[i / columns, i % columns] = order[i];
        }
        List<int> clashing = Clashing(dealt);
        for (long swap = 0; clashing.Count > 0 && swap < (long)SwapsPerPlace * places; swap++)
        {
            int a = clashing[random.Below(clashing.Count)];
            int b = random.Below(places);
            int before = ClashesAround(dealt, a) + ClashesAround(dealt, b);
            Swap(dealt, a, b);
            int after = ClashesAround(dealt, a) + ClashesAround(dealt, b);
            // Level swaps are kept too, so that the search can leave a plateau.
            if (after > before)
            {
                Swap(dealt, a, b);
            }
            else if (after < before)
            {
                clashing = Clashing(dealt);
            }
        }
        return clashing.Count == 0 ? dealt : null;
    }

    private static void Shuffle(int[] order, RandomSequence random)
    {
        for (int i = order.Length - 1; i > 0; i--)
        {
            int j = random.Below(i + 1);
            (order[i], order[j]) = (order[j], order[i]);
        }
    }

    private static void Swap(int[,] dealt, int a, int b)
    {
        int columns = dealt.GetLength(1);
        (dealt[a / columns, a % columns], dealt[b / columns, b % columns]) = (
            dealt[b / columns, b % columns],
            dealt[a / columns, a % columns]
        );
    }

    private static List<int> Clashing(int[,] dealt)
    {
        var clashing = new List<int>();
        for (int i = 0; i < dealt.Length; i++)
        {
            if (ClashesAround(dealt, i) > 0)
            {
                clashing.Add(i);
            }
        }
        return clashing;
    }

    private static int ClashesAround(int[,] dealt, int place)
    {
        int rows = dealt.GetLength(0),
            columns = dealt.GetLength(1);
        int r = place / columns,
            c = place % columns,
            own = dealt[r, c],
            clashes = 0;
        clashes += r > 0 && dealt[r - 1, c] == own ? 1 : 0;
        clashes += r < rows - 1 && dealt[r + 1, c] == own ? 1 : 0;
        clashes += c > 0 && dealt[r, c - 1] == own ? 1 : 0;
        clashes += c < columns - 1 && dealt[r, c + 1] == own ? 1 : 0;
        return clashes;
    }
}
