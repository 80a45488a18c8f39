using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Cutting;

/// <summary>
/// Gathers the squares that side and corner triangles are cut from. Side triangles come four from a square cut twice
/// diagonally, corner triangles two from a square cut once: so the straight grain lies along the edge of the quilt.
/// </summary>
internal static class SettingTriangleCuts
{
    public static void Gather(Quilt quilt, int size, CutDrafts drafts)
    {
        foreach (TriangleRun run in Runs(quilt))
        {
            Length exactly = Square(run.Kind, run.Edge, quilt.House),
                cut = quilt.House.Ruler.Up(exactly + quilt.House.TriangleOversize);
            drafts.Add(
                run.Fabric,
                FabricUse.Top,
                new CutPurpose.SettingTriangle(run.Kind, run.Number),
                size,
                new CutDraftCell(cut, cut, (exactly, exactly), run.Squares),
                run.Kind == SettingPieceKind.Side
                    ? PieceCut.TwiceDiagonally
                    : PieceCut.OnceDiagonally
            );
        }
    }

    /// <summary>Triangles alike in kind, fabric and size; of one kind and fabric the largest is number 1.</summary>
    public static IEnumerable<TriangleRun> Runs(Quilt quilt)
    {
        var counts = new Dictionary<(SettingPieceKind, string, Length), int>();
        foreach (SettingPiece piece in quilt.Pieces.Where(piece => !piece.IsPatch))
        {
            var key = (piece.Kind, piece.Fabric, piece.Edge);
            counts[key] = counts.GetValueOrDefault(key) + 1;
        }
        if (counts.Count == 0)
        {
            yield break;
        }
        (SettingPieceKind, string)? last = null;
        int number = 0;
        foreach (
            ((SettingPieceKind Kind, string Fabric, Length Edge) key, int count) in counts
                .OrderBy(c => c.Key.Item1)
                .ThenBy(c => c.Key.Item2, StringComparer.Ordinal)
                .ThenByDescending(c => c.Key.Item3)
        )
        {
            number = last == (key.Kind, key.Fabric) ? number + 1 : 1;
            last = (key.Kind, key.Fabric);
            yield return new TriangleRun(key.Kind, key.Fabric, number, key.Edge, count);
        }
    }

    /// <summary>
    /// The side of the square: the finished edge and the trade's allowance, 1 1/4 in or 7/8 in, which is rounded up to the
    /// ruler before it is added. So published tables do it, and it leaves a thread to trim.
    /// </summary>
    public static Length Square(SettingPieceKind kind, Length edge, House house) =>
        edge + AllowanceOf(kind, house);

    public static Length AllowanceOf(SettingPieceKind kind, House house) =>
        house.Ruler.Up(
            kind == SettingPieceKind.Side
                ? Allowance.QuarterSquare(house.Seam)
                : Allowance.HalfSquare(house.Seam)
        );
}

/// <summary>Setting triangles that are alike.</summary>
/// <param name="Edge">Finished: the long edge of side triangles, a short edge of corner triangles.</param>
internal sealed record TriangleRun(
    SettingPieceKind Kind,
    string Fabric,
    int Number,
    Length Edge,
    int Count
)
{
    public int PerSquare => Kind == SettingPieceKind.Side ? 4 : 2;

    public int Squares => (Count + PerSquare - 1) / PerSquare;
}
