using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Tables;

/// <summary>The pieces of a one-patch quilt.</summary>
internal static class PatchTabulator
{
    public static ImmutableArray<PatchRow> Tabulate(Making making)
    {
        var rows =
            new SortedDictionary<
                (SettingPieceKind Kind, bool Reversed, int Fabric),
                (string Fabric, PatchCell?[] BySize)
            >();
        for (int i = 0; i < making.Sizes.Length; i++)
        {
            foreach (PatchRun run in PatchCuts.Runs(making.Sizes[i].Quilt))
            {
                var key = (
                    run.Kind,
                    run.Reversed,
                    making.Pattern.Fabric(run.Fabric)?.Order ?? int.MaxValue
                );
                if (!rows.TryGetValue(key, out (string Fabric, PatchCell?[] BySize) row))
                {
                    row = (run.Fabric, new PatchCell?[making.Sizes.Length]);
                    rows.Add(key, row);
                }
                row.BySize[i] = CellOf(making.Sizes[i], run);
            }
        }
        return
        [
            .. rows.Select(row => new PatchRow(
                row.Key.Kind,
                row.Key.Reversed,
                row.Value.Fabric,
                [.. row.Value.BySize]
            )),
        ];
    }

    private static PatchCell? CellOf(SizeMaking size, PatchRun run)
    {
        var purpose = new CutPurpose.OnePatch(run.Kind, run.Reversed);
        if (
            size.Cuts.FirstOrDefault(c => c.Purpose == purpose && c.Fabric == run.Fabric)
            is not { } cut
        )
        {
            return null;
        }
        long each = run.IsEnd ? 1 : PatchCuts.Nested(run, size.Quilt.House).CountIn(cut.Width);
        return new PatchCell(cut.Id, run.Count, cut.Count, each, cut.Height, run.Height);
    }
}
