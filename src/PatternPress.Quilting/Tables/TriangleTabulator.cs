using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Tables;

/// <summary>Side and corner triangles of settings on point.</summary>
internal static class TriangleTabulator
{
    public static ImmutableArray<TriangleRow> Tabulate(Making making)
    {
        var rows =
            new SortedDictionary<
                (SettingPieceKind Kind, int Fabric, int Number),
                (string Fabric, TriangleCell?[] BySize)
            >();
        for (int i = 0; i < making.Sizes.Length; i++)
        {
            foreach (TriangleRun run in SettingTriangleCuts.Runs(making.Sizes[i].Quilt))
            {
                int order = making.Pattern.Fabric(run.Fabric)?.Order ?? int.MaxValue;
                var key = (run.Kind, order, run.Number);
                if (!rows.TryGetValue(key, out (string Fabric, TriangleCell?[] BySize) row))
                {
                    row = (run.Fabric, new TriangleCell?[making.Sizes.Length]);
                    rows.Add(key, row);
                }
                row.BySize[i] = CellOf(making.Sizes[i], run);
            }
        }
        return
        [
            .. rows.Select(row => new TriangleRow(
                row.Key.Kind,
                row.Value.Fabric,
                row.Key.Number,
                [.. row.Value.BySize]
            )),
        ];
    }

    private static TriangleCell? CellOf(SizeMaking size, TriangleRun run)
    {
        var purpose = new CutPurpose.SettingTriangle(run.Kind, run.Number);
        return
            size.Cuts.FirstOrDefault(c => c.Purpose == purpose && c.Fabric == run.Fabric) is { } cut
            ? new TriangleCell(cut.Id, run.Count, cut.Count, cut.Width, run.Edge)
            : null;
    }
}
