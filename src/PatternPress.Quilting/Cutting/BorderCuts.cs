using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
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
            var joins = new List<(string Fabric, int Set, LongStrips Strips)>();
            foreach (BorderRun run in Runs(border))
            {
                int at = joins.FindIndex(j => j.Fabric == run.Fabric && j.Set == run.Set);
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
                    joins.Add((run.Fabric, run.Set, strips));
                }
                // At 45° the seam allowance reaches seam × (1 + √2) beyond the point of a strip; the house adds to that.
                Length more =
                    border.Design.Corners == BorderCorners.Mitered
                        ? (quilt.House.Seam * new Exact(0, 2)) + quilt.House.MiterAllowance
                        : Length.Zero;
                var place = run.IsLevel
                    ? (run.Width + more, run.Height)
                    : (run.Width, run.Height + more);
                var purpose = new CutPurpose.Border(border.Number, run.Part);
                if (!strips.TryCut(purpose, place, run.Count))
                {
                    strips.Join(run.Part, place, run.Count);
                }
            }
            foreach ((string _, int set, LongStrips strips) in joins)
            {
                var purpose = new CutPurpose.Border(border.Number, BorderPart.Joined, set);
                if (strips.Finish(purpose) is { } joined)
                {
                    yield return joined;
                }
            }
        }
    }

    /// <summary>The pieces of a border that are alike: its sides, its top and bottom, its corners. Opposite strips that differ are
    /// told apart.</summary>
    public static IEnumerable<BorderRun> Runs(Border border)
    {
        List<Length> widths = [.. border.Widths.Different()];
        IEnumerable<
            IGrouping<(BorderPart Part, string Fabric, Length Width, Length Height), BorderPiece>
        > alike = border.Pieces.ToLookup(p =>
            (PartOf(p.Side, border.Widths), p.Fabric, p.Place.Width, p.Place.Height)
        );
        return alike.Select(g => new BorderRun(
            g.Key.Part,
            g.Key.Fabric,
            g.Key.Width,
            g.Key.Height,
            g.Count(),
            g.Key.Part == BorderPart.Corners
                ? 1
                : widths.IndexOf(IsLevel(g.Key.Part) ? g.Key.Height : g.Key.Width) + 1
        ));
    }

    /// <summary>Which part of a border a side belongs to: opposite sides of one width are one part.</summary>
    public static BorderPart PartOf(BorderSide side, BorderWidths widths) =>
        side switch
        {
            BorderSide.Left => widths.Left == widths.Right ? BorderPart.Sides : BorderPart.Left,
            BorderSide.Right => widths.Left == widths.Right ? BorderPart.Sides : BorderPart.Right,
            BorderSide.Top => widths.Top == widths.Bottom
                ? BorderPart.TopAndBottom
                : BorderPart.Top,
            BorderSide.Bottom => widths.Top == widths.Bottom
                ? BorderPart.TopAndBottom
                : BorderPart.Bottom,
            _ => BorderPart.Corners,
        };

    /// <summary>Whether a part runs across the quilt.</summary>
    public static bool IsLevel(BorderPart part) =>
        part is BorderPart.TopAndBottom or BorderPart.Top or BorderPart.Bottom;
}

/// <summary>Border pieces that are alike, finished, as they lie in the quilt.</summary>
/// <param name="Set">The strips it may be joined with: all of one width, from 1.</param>
internal sealed record BorderRun(
    BorderPart Part,
    string Fabric,
    Length Width,
    Length Height,
    int Count,
    int Set
)
{
    public bool IsLevel => BorderCuts.IsLevel(Part);
}
