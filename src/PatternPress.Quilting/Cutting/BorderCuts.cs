using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Cutting;

/// <summary>Gathers the border strips and corner squares of one size.</summary>
internal static class BorderCuts
{
    /// <param name="inOneLength">Fabrics whose borders are cut along the fabric rather than joined.</param>
    public static IEnumerable<JoinedDraft> Gather(
        Quilt quilt,
        int size,
        CutDrafts drafts,
        IReadOnlySet<string> inOneLength
    )
    {
        foreach (Border border in quilt.Borders)
        {
            var joins = new List<(string Fabric, LongStrips Strips)>();
            foreach (BorderRun run in Runs(border))
            {
                int at = joins.FindIndex(j => j.Fabric == run.Fabric);
                LongStrips strips =
                    at >= 0
                        ? joins[at].Strips
                        : new(
                            drafts,
                            quilt.House,
                            size,
                            run.Fabric,
                            inOneLength.Contains(run.Fabric)
                        );
                if (at < 0)
                {
                    joins.Add((run.Fabric, strips));
                }
                // At 45° the seam allowance reaches seam × (1 + √2) beyond the point of a strip; the house adds to that.
                Length more =
                    border.Design.Corners == Model.BorderCorners.Mitered
                        ? (quilt.House.Seam * new Exact(0, 2)) + quilt.House.MiterAllowance
                        : Length.Zero;
                var place =
                    run.Part == BorderPart.TopAndBottom
                        ? (run.Width + more, run.Height)
                        : (run.Width, run.Height + more);
                var purpose = new CutPurpose.Border(border.Number, run.Part);
                if (!strips.TryCut(purpose, place, run.Count))
                {
                    strips.Join(run.Part, place, run.Count);
                }
            }
            foreach ((string _, LongStrips strips) in joins)
            {
                var purpose = new CutPurpose.Border(border.Number, BorderPart.Joined);
                if (strips.Finish(purpose) is { } joined)
                {
                    yield return joined;
                }
            }
        }
    }

    /// <summary>The pieces of a border that are alike: its sides, its top and bottom, its corners.</summary>
    public static IEnumerable<BorderRun> Runs(Border border) =>
        border
            .Pieces.GroupBy(p => (Part: PartOf(p.Side), p.Fabric, p.Place.Width, p.Place.Height))
            .Select(g => new BorderRun(
                g.Key.Part,
                g.Key.Fabric,
                g.Key.Width,
                g.Key.Height,
                g.Count()
            ));

    private static BorderPart PartOf(BorderSide side) =>
        side switch
        {
            BorderSide.Left or BorderSide.Right => BorderPart.Sides,
            BorderSide.Top or BorderSide.Bottom => BorderPart.TopAndBottom,
            _ => BorderPart.Corners,
        };
}

/// <summary>Border pieces that are alike, finished, as they lie in the quilt.</summary>
internal sealed record BorderRun(
    BorderPart Part,
    string Fabric,
    Length Width,
    Length Height,
    int Count
);
