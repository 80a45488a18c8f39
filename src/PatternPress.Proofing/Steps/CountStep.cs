using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>
/// Sets the seam, and counts on the placement chart how many of each block there are, and so of each unit and patch.
/// </summary>
internal static class CountStep
{
    public static void Do(Workbench bench)
    {
        bench.Notes.Same(
            ProofStep.SewUnits,
            "sizes",
            "",
            "seam allowance",
            bench.Seam,
            bench.House.Seam,
            "the house sews"
        );
        PlacementChart chart = bench.Tables.Placement[bench.Size];
        IEnumerable<(PlacementCell Cell, int Count)> cells = chart
            .Rows.SelectMany(row => row)
            .Select(cell => (cell, 1))
            .Concat(
                chart.Sections.SelectMany(section =>
                    section
                        .Parts.Where(part => part.Block is not null)
                        .Select(part => (part.Block!, section.Count))
                )
            );
        foreach ((PlacementCell cell, int count) in cells)
        {
            var key = (cell.Coloring, cell.Number);
            bench.BlocksPlaced[key] = bench.BlocksPlaced.GetValueOrDefault(key) + count;
            if (!bench.Notes.Ok(bench.Index.Blocks.ContainsKey(key)))
            {
                bench.Notes.Wrong(
                    ProofStep.LayOut,
                    "placement chart",
                    "",
                    "block",
                    $"{cell.Coloring} {cell.Number}",
                    "there is no block of that name"
                );
            }
        }
        foreach (((string, int) key, BlockRow row) in bench.Index.Blocks)
        {
            long placed = bench.BlocksPlaced.GetValueOrDefault(key);
            if (placed == 0)
            {
                continue;
            }
            foreach (BlockPart part in row.Parts)
            {
                if (part.Unit is { } unit)
                {
                    bench.UnitsTaken[unit] = bench.UnitsTaken.GetValueOrDefault(unit) + placed;
                }
                if (part.Cut is { } cut)
                {
                    bench.Use(cut, placed);
                }
            }
        }
    }
}
