using System.Collections.Immutable;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Colors;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// Gives every fabric of a pattern a hatch of its own, the same in all sizes. Dark fabrics get dense hatches and light
/// ones open hatches, so that the chart in black and white has the quilt's own light and shade; fabrics that lie side
/// by side get hatches that are far apart. Nothing is left to chance: the same pattern always gets the same hatches.
/// </summary>
public static class HatchAssignment
{
    // How much a hatch may differ from the fabric's place in the scale of light before likeness to neighbours counts more.
    private const double ToneWeight = 1.2;
    private const double NeighborWeight = 1;
    private const double AnyPairWeight = 0.08;

    /// <summary>
    /// The hatches in the order of <paramref name="fabrics"/>, all different: where there are more fabrics than
    /// hatches, a hatch comes back at another size.
    /// </summary>
    /// <param name="quilts">The sizes, to know which fabrics meet.</param>
    /// <param name="hatches">What may be used, in order of preference.</param>
    public static ImmutableArray<(Hatch Hatch, double Scale)> Assign(
        ImmutableArray<Fabric> fabrics,
        IEnumerable<Quilt> quilts,
        ImmutableArray<Hatch> hatches
    )
    {
        if (fabrics.IsEmpty)
        {
            return [];
        }
        HatchSignature[] choices = ChoicesFor(fabrics.Length, hatches);
        double[,] meeting = MeetingOf(fabrics, quilts);
        double[] tones = TonesOf(fabrics);
        double[] densities = DensitiesOf(choices);
        double[,] likeness = LikenessOf(choices);
        int[] taken = Greedy(tones, densities, meeting, likeness);
        Improve(taken, tones, densities, meeting, likeness);
        return [.. taken.Select(t => (choices[t].Hatch, choices[t].Scale))];
    }

    private static HatchSignature[] ChoicesFor(int fabrics, ImmutableArray<Hatch> hatches)
    {
        double[] scales = [1, 1.7, 2.6, 3.8];
        int rounds = Math.Min(scales.Length, ((fabrics - 1) / hatches.Length) + 1);
        var choices = scales
            .Take(rounds)
            .SelectMany(s => hatches.Select(h => new HatchSignature(h, s)));
        // A pattern with more fabrics than that has letters to tell them apart; hatches then repeat.
        return
        [
            .. Enumerable
                .Repeat(choices, ((fabrics - 1) / (hatches.Length * rounds)) + 1)
                .SelectMany(c => c),
        ];
    }

    private static double[,] LikenessOf(HatchSignature[] choices)
    {
        var likeness = new double[choices.Length, choices.Length];
        for (int a = 0; a < choices.Length; a++)
        {
            for (int b = 0; b <= a; b++)
            {
                likeness[a, b] = likeness[b, a] = choices[a].LikenessTo(choices[b]);
            }
        }
        return likeness;
    }

    // Share of their edges along which two fabrics meet: 1 where one is surrounded by the other.
    private static double[,] MeetingOf(ImmutableArray<Fabric> fabrics, IEnumerable<Quilt> quilts)
    {
        var index = new Dictionary<string, int>();
        foreach (Fabric fabric in fabrics)
        {
            index.TryAdd(fabric.Key, index.Count);
        }
        var lengths = new double[fabrics.Length, fabrics.Length];
        var edges = new double[fabrics.Length];
        foreach (Quilt quilt in quilts)
        {
            var lines = new SeamLines();
            foreach (FlatQuilt.FlatPatch patch in FlatQuilt.Of(quilt).Patches)
            {
                if (index.TryGetValue(patch.Fabric, out int tag))
                {
                    lines.Add(patch.Corners, patch.By, tag);
                }
            }
            foreach (((int a, int b), double length) in lines.Neighbors())
            {
                lengths[a, b] += length;
                lengths[b, a] += length;
                edges[a] += length;
                edges[b] += length;
            }
        }
        for (int a = 0; a < fabrics.Length; a++)
        {
            for (int b = 0; b < fabrics.Length; b++)
            {
                double least = Math.Min(edges[a], edges[b]);
                // Even a short seam wants two hatches that differ; the root lets it count.
                lengths[a, b] = least > 0 ? Math.Sqrt(lengths[a, b] / least) : 0;
            }
        }
        return lengths;
    }

    // Place of each fabric between the lightest (0) and the darkest (1).
    private static double[] TonesOf(ImmutableArray<Fabric> fabrics)
    {
        double[] light = [.. fabrics.Select(f => Contrast.Luminance(f.Color))];
        int[] order = [.. Enumerable.Range(0, light.Length).OrderByDescending(i => light[i])];
        return PlacesOf(order);
    }

    private static double[] DensitiesOf(HatchSignature[] choices)
    {
        int[] order = [.. Enumerable.Range(0, choices.Length).OrderBy(i => choices[i].Coverage)];
        return PlacesOf(order);
    }

    private static double[] PlacesOf(int[] order)
    {
        var places = new double[order.Length];
        for (int i = 0; i < order.Length; i++)
        {
            places[order[i]] = order.Length == 1 ? 0.5 : (double)i / (order.Length - 1);
        }
        return places;
    }

    // The fabrics with the most neighbours choose first.
    private static int[] Greedy(
        double[] tones,
        double[] densities,
        double[,] meeting,
        double[,] likeness
    )
    {
        int count = tones.Length;
        var taken = Enumerable.Repeat(-1, count).ToArray();
        var free = Enumerable.Repeat(true, densities.Length).ToArray();
        double[] busy =
        [
            .. Enumerable
                .Range(0, count)
                .Select(a => Enumerable.Range(0, count).Sum(b => meeting[a, b])),
        ];
        foreach (int fabric in Enumerable.Range(0, count).OrderByDescending(i => busy[i]))
        {
            int best = -1;
            double least = double.MaxValue;
            for (int choice = 0; choice < densities.Length; choice++)
            {
                if (!free[choice])
                {
                    continue;
                }
                double cost = CostOf(fabric, choice, taken, tones, densities, meeting, likeness);
                if (cost < least - 1e-12)
                {
                    (best, least) = (choice, cost);
                }
            }
            taken[fabric] = best;
            free[best] = false;
        }
        return taken;
    }

    // Exchanges two fabrics' hatches, or one for an unused hatch, as long as that helps.
    private static void Improve(
        int[] taken,
        double[] tones,
        double[] densities,
        double[,] meeting,
        double[,] likeness
    )
    {
        const int rounds = 8;
        bool better = true;
        for (int round = 0; round < rounds && better; round++)
        {
            better = false;
            for (int a = 0; a < taken.Length; a++)
            {
                for (int choice = 0; choice < densities.Length; choice++)
                {
                    int b = Array.IndexOf(taken, choice);
                    if (b == a)
                    {
                        continue;
                    }
                    double before = Together(a, b);
                    int had = taken[a];
                    Exchange(a, b, choice, had);
                    if (Together(a, b) < before - 1e-9)
                    {
                        better = true;
                    }
                    else
                    {
                        Exchange(a, b, had, choice);
                    }
                }
            }
        }

        void Exchange(int a, int b, int forA, int forB)
        {
            taken[a] = forA;
            if (b >= 0)
            {
                taken[b] = forB;
            }
        }

        double Together(int a, int b) =>
            CostOf(a, taken[a], taken, tones, densities, meeting, likeness)
            + (b < 0 ? 0 : CostOf(b, taken[b], taken, tones, densities, meeting, likeness));
    }

    private static double CostOf(
        int fabric,
        int choice,
        int[] taken,
        double[] tones,
        double[] densities,
        double[,] meeting,
        double[,] likeness
    )
    {
        double off = tones[fabric] - densities[choice];
        double cost = ToneWeight * off * off * 4;
        for (int other = 0; other < taken.Length; other++)
        {
            if (other == fabric || taken[other] < 0)
            {
                continue;
            }
            cost +=
                likeness[choice, taken[other]]
                * ((NeighborWeight * meeting[fabric, other]) + AnyPairWeight);
        }
        return cost;
    }
}
