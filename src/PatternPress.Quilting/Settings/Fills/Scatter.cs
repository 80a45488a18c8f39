using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Settings.Fills;

/// <summary>
/// Spread by chance from a seed: no two edge neighbours alike, each coloring used equally often (counts differ by
/// one at most). Deals the colorings out at random, then swaps places until no neighbours match.
/// </summary>
public sealed class Scatter : FillPattern
{
    // Far above what solvable layouts need, and still quick.
    private const int SwapsPerPlace = 2000;

    // Tuned on three colorings, the hardest case: rarer gets stuck, more often never settles.
    private const int OneUphillIn = 40;

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
        var clashing = new ClashList(dealt);
        for (long swap = 0; swap < (long)SwapsPerPlace * places; swap++)
        {
            if (clashing.Pick(random) is not { } a)
            {
                return dealt;
            }
            int b = random.Below(places);
            int before = ClashesAround(dealt, a) + ClashesAround(dealt, b);
            Swap(dealt, a, b);
            int after = ClashesAround(dealt, a) + ClashesAround(dealt, b);
            // Level swaps are kept, and now and then one that makes things a little worse: few colorings on many
            // places leave the search in dead ends otherwise.
            bool keep = after <= before || (after == before + 1 && random.Below(OneUphillIn) == 0);
            if (keep)
            {
                clashing.Changed(a);
                clashing.Changed(b);
            }
            else
            {
                Swap(dealt, a, b);
            }
        }
        return null;
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

    /// <summary>
    /// The places that clash with a neighbour, kept up to date lazily: every clashing place is in the list, and what
    /// no longer clashes is dropped when it is picked.
    /// </summary>
    private sealed class ClashList
    {
        private readonly int[,] _dealt;
        private readonly List<int> _places = [];
        private readonly bool[] _listed;

        public ClashList(int[,] dealt)
        {
            _dealt = dealt;
            _listed = new bool[dealt.Length];
            for (int place = 0; place < dealt.Length; place++)
            {
                Note(place);
            }
        }

        /// <summary>A clashing place at random; null if there is none.</summary>
        public int? Pick(RandomSequence random)
        {
            while (_places.Count > 0)
            {
                int index = random.Below(_places.Count);
                int place = _places[index];
                if (ClashesAround(_dealt, place) > 0)
                {
                    return place;
                }
                _listed[place] = false;
                _places[index] = _places[^1];
                _places.RemoveAt(_places.Count - 1);
            }
            return null;
        }

        public void Changed(int place)
        {
            int columns = _dealt.GetLength(1);
            Note(place);
            if (place >= columns)
            {
                Note(place - columns);
            }
            if (place + columns < _dealt.Length)
            {
                Note(place + columns);
            }
            if (place % columns > 0)
            {
                Note(place - 1);
            }
            if (place % columns < columns - 1)
            {
                Note(place + 1);
            }
        }

        private void Note(int place)
        {
            if (!_listed[place] && ClashesAround(_dealt, place) > 0)
            {
                _listed[place] = true;
                _places.Add(place);
            }
        }
    }
}
