using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Cutting;

/// <summary>Gathers the sashing strips and cornerstones of one size.</summary>
internal static class SashingCuts
{
    public static IEnumerable<JoinedDraft> Gather(Quilt quilt, int size, CutDrafts drafts)
    {
        foreach (SashRun run in Runs(quilt))
        {
            var strips = new LongStrips(drafts, quilt.House, size, run.Fabric);
            var place = (run.Width + run.Slanted(quilt.House.Seam), run.Height);
            if (strips.TryCut(new CutPurpose.Sashing(run.Kind, run.Number), place, run.Count))
            {
                continue;
            }
            strips.Join(null, place, run.Count);
            yield return strips.Finish(new CutPurpose.SashingJoined(run.Kind, run.Number))!;
        }
    }

    /// <summary>Sashing alike in kind, fabric and finished size; of one kind and fabric the largest is number 1.</summary>
    public static IEnumerable<SashRun> Runs(Quilt quilt)
    {
        bool slanted = quilt.OnPoint;
        var counts = new Dictionary<(SashKind, string, Length, Length), int>();
        foreach (Sash sash in quilt.Sashes)
        {
            var key = (sash.Kind, sash.Fabric, sash.Place.Width, sash.Place.Height);
            counts[key] = counts.GetValueOrDefault(key) + 1;
        }
        SashKind? kind = null;
        string? fabric = null;
        int number = 0;
        var sorted = new List<KeyValuePair<(SashKind, string, Length, Length), int>>(counts);
        sorted.Sort(
            (a, b) =>
            {
                int order = (int)a.Key.Item1 - (int)b.Key.Item1;
                order = order != 0 ? order : string.CompareOrdinal(a.Key.Item2, b.Key.Item2);
                order = order != 0 ? order : b.Key.Item3.CompareTo(a.Key.Item3);
                return order != 0 ? order : b.Key.Item4.CompareTo(a.Key.Item4);
            }
        );
        foreach (
            ((SashKind Kind, string Fabric, Length Width, Length Height) key, int count) in sorted
        )
        {
            number = kind == key.Kind && fabric == key.Fabric ? number + 1 : 1;
            (kind, fabric) = (key.Kind, key.Fabric);
            yield return new SashRun(key.Kind, key.Fabric, number, key.Width, key.Height, count)
            {
                SlantedEnds = slanted && key.Kind == SashKind.Row,
            };
        }
    }
}

/// <summary>Sashing strips that are alike, finished.</summary>
internal sealed record SashRun(
    SashKind Kind,
    string Fabric,
    int Number,
    Length Width,
    Length Height,
    int Count
)
{
    /// <summary>Whether the edge of the quilt cuts both ends at 45°.</summary>
    public bool SlantedEnds { get; init; }

    /// <summary>
    /// What slanted ends add to the length beyond two seams: at 45° a seam allowance reaches seam × (1 + √2) beyond the
    /// point, on both ends.
    /// </summary>
    public Length Slanted(Length seam) => SlantedEnds ? seam * new Exact(0, 2) : Length.Zero;
}
