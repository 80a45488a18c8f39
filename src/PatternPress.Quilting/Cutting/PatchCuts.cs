using PatternPress.Quilting.Cutting.Planning;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Settings;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Cutting;

/// <summary>
/// Gathers the pieces of a one-patch quilt. Whole ones are cut side by side from strips across the fabric, every second upside
/// down; ends out of rectangles of the strip's height, around a template.
/// </summary>
internal static class PatchCuts
{
    public static void Gather(Quilt quilt, int size, CutDrafts drafts)
    {
        foreach (PatchRun run in Runs(quilt))
        {
            House house = quilt.House;
            Length exactly = SixtyDegrees.StripHeight(run.Kind, run.Height, house.Seam),
                height = house.Ruler.Up(exactly);
            var purpose = new CutPurpose.OnePatch(run.Kind, run.Reversed);
            if (run.IsEnd)
            {
                Length width = SixtyDegrees
                    .TemplateOf(run.Kind, run.Reversed, run.Height, house.Seam)
                    .Cut.Bounds.Width;
                drafts.Add(
                    run.Fabric,
                    FabricUse.Top,
                    purpose,
                    size,
                    new CutDraftCell(house.Ruler.Up(width), height, (width, exactly), run.Count),
                    PieceCut.AroundTemplate
                );
                continue;
            }
            Length length = drafts.StripLength(run.Fabric, size);
            long strips = Nested(run, house).StripsFor(run.Count, length) ?? run.Count;
            drafts.Add(
                run.Fabric,
                FabricUse.Top,
                purpose,
                size,
                new CutDraftCell(length, height, (length, exactly), strips),
                PieceCut.AcrossAtSixty,
                wholeStrip: true
            );
        }
    }

    /// <summary>How the pieces nest in their strips.</summary>
    public static SlantedPiece Nested(PatchRun run, House house) =>
        SixtyDegrees.Nested(run.Kind, run.Height, house.Seam);

    /// <summary>Pieces alike in kind and fabric.</summary>
    public static IEnumerable<PatchRun> Runs(Quilt quilt)
    {
        if (!quilt.Pieces.Any(piece => piece.IsPatch))
        {
            return [];
        }
        return quilt
            .Pieces.Where(piece => piece.IsPatch)
            .GroupBy(piece => (piece.Kind, piece.Reversed, piece.Fabric, piece.Edge))
            .OrderBy(g => g.Key.Kind)
            .ThenBy(g => g.Key.Reversed)
            .ThenBy(g => g.Key.Fabric, StringComparer.Ordinal)
            .Select(g => new PatchRun(
                g.Key.Kind,
                g.Key.Reversed,
                g.Key.Fabric,
                g.Key.Edge,
                g.Count()
            ));
    }
}

/// <summary>Pieces of a one-patch quilt that are alike.</summary>
/// <param name="Height">Finished, of their row.</param>
internal sealed record PatchRun(
    SettingPieceKind Kind,
    bool Reversed,
    string Fabric,
    Length Height,
    int Count
)
{
    public bool IsEnd =>
        Kind
            is SettingPieceKind.TriangleEnd
                or SettingPieceKind.DiamondEnd
                or SettingPieceKind.HexagonEnd;
}
