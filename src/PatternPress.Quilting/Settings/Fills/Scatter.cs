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
        FillGrid grid,
        [NotNullWhen(true)] out FillCell[][]? cells,
        [NotNullWhen(false)] out string? problem
    )
    {
        FillCell[] list = [.. fill.Rows.SelectMany(row => row)];
        problem = null;
        if (list.Length == 2)
        {
            // Two colorings leave only one arrangement: a checkerboard, and chance picks which comes first.
            int first = (int)(new RandomSequence(fill.Seed).Next() & 1);
            cells = grid.Fill(
                (line, place) => list[((grid.Between ? line : line + place) + first) % 2]
            );
            return true;
        }
        int[]? dealt =
            list.Length == 1 && grid.Count > 1
                ? null
                : Deal(list.Length, grid.Neighbors(), fill.Seed);
        if (dealt is null)
        {
            cells = null;
            problem =
                $"{list.Length} coloring{(list.Length == 1 ? "" : "s")} cannot fill {grid.Columns} × {grid.Rows} places with no two neighbours alike";
            return false;
        }
        int next = 0;
        cells = grid.Fill((_, _) => list[dealt[next++]]);
        return true;
    }

    private static int[]? Deal(int kinds, int[][] neighbors, int seed)
    {
        var random = new RandomSequence(seed);
        int places = neighbors.Length;
        int[] dealt = [.. Enumerable.Range(0, places).Select(i => i % kinds)];
        Shuffle(dealt, random);
        var clashing = new ClashList(dealt, neighbors);
        for (long swap = 0; swap < (long)SwapsPerPlace * places; swap++)
        {
            if (clashing.Pick(random) is not { } a)
            {
                return dealt;
            }
            int b = random.Below(places);
            int before = clashing.Around(a) + clashing.Around(b);
            (dealt[a], dealt[b]) = (dealt[b], dealt[a]);
            int after = clashing.Around(a) + clashing.Around(b);
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
                (dealt[a], dealt[b]) = (dealt[b], dealt[a]);
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

    /// <summary>
    /// The places that clash with a neighbour, kept up to date lazily: every clashing place is in the list, and what
    /// no longer clashes is dropped when it is picked.
    /// </summary>
    private sealed class ClashList
    {
        private readonly int[] _dealt;
        private readonly int[][] _neighbors;
        private readonly List<int> _places = [];
        private readonly bool[] _listed;

        public ClashList(int[] dealt, int[][] neighbors)
        {
            _dealt = dealt;
            _neighbors = neighbors;
            _listed = new bool[dealt.Length];
            for (int place = 0; place < dealt.Length; place++)
            {
                Note(place);
            }
        }

        /// <summary>How many neighbours of a place are like it.</summary>
        public int Around(int place)
        {
            int clashes = 0;
            foreach (int neighbor in _neighbors[place])
            {
                clashes += _dealt[neighbor] == _dealt[place] ? 1 : 0;
            }
            return clashes;
        }

        /// <summary>A clashing place at random; null if there is none.</summary>
        public int? Pick(RandomSequence random)
        {
            while (_places.Count > 0)
            {
                int index = random.Below(_places.Count);
                int place = _places[index];
                if (Around(place) > 0)
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
            Note(place);
            foreach (int neighbor in _neighbors[place])
            {
                Note(neighbor);
            }
        }

        private void Note(int place)
        {
            if (!_listed[place] && Around(place) > 0)
            {
                _listed[place] = true;
                _places.Add(place);
            }
        }
    }
}
