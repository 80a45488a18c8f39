using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Tables;

/// <summary>Sashing strips and cornerstones.</summary>
internal static class SashingTabulator
{
    public static ImmutableArray<SashingRow> Tabulate(Making making)
    {
        var rows =
            new SortedDictionary<
                (SashKind Kind, int Fabric, int Number),
                (string Fabric, SashingCell?[] BySize)
            >();
        for (int i = 0; i < making.Sizes.Length; i++)
        {
            foreach (SashRun run in SashingCuts.Runs(making.Sizes[i].Quilt))
            {
                int order = making.Pattern.Fabric(run.Fabric)?.Order ?? int.MaxValue;
                var key = (run.Kind, order, run.Number);
                if (!rows.TryGetValue(key, out (string Fabric, SashingCell?[] BySize) row))
                {
                    row = (run.Fabric, new SashingCell?[making.Sizes.Length]);
                    rows.Add(key, row);
                }
                row.BySize[i] = CellOf(making.Sizes[i], run);
            }
        }
        return
        [
            .. rows.Select(row => new SashingRow(
                row.Key.Kind,
                row.Value.Fabric,
                row.Key.Number,
                [.. row.Value.BySize]
            )),
        ];
    }

    private static SashingCell? CellOf(SizeMaking size, SashRun run)
    {
        var purpose = new CutPurpose.Sashing(run.Kind, run.Number);
        if (
            size.Cuts.FirstOrDefault(cut => cut.Purpose == purpose && cut.Fabric == run.Fabric) is
            { } cut
        )
        {
            return new SashingCell(
                cut.Id,
                run.Count,
                run.Width,
                run.Height,
                cut.Width,
                cut.Height,
                null
            );
        }
        var joinedPurpose = new CutPurpose.SashingJoined(run.Kind, run.Number);
        if (
            size.Joined.FirstOrDefault(strips =>
                strips.Purpose == joinedPurpose && strips.Fabric == run.Fabric
            )
            is not { } joined
        )
        {
            return null;
        }
        Length length = joined.Pieces[0].Length;
        (Length width, Length height) =
            run.Width > run.Height ? (length, joined.StripWidth) : (joined.StripWidth, length);
        return new SashingCell(
            joined.Cut,
            run.Count,
            run.Width,
            run.Height,
            width,
            height,
            JoinedRow.Of(joined)
        );
    }
}
