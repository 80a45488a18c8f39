using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>
/// Sets the seam, and counts on the placement chart and in the rows of the borders how many of each block there are, and so of each unit and patch.
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
        if (chart.Setting == "one-patch")
        {
            // Its places hold patches, which are counted as they are laid out.
            return;
        }
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
            Place(bench, cell, count, ProofStep.LayOut, "placement chart", "");
        }
        foreach (BorderRow border in bench.Tables.Borders)
        {
            foreach (BorderBlocksRow row in border.BySize[bench.Size]?.Rows ?? [])
            {
                foreach (PlacementCell cell in row.Blocks)
                {
                    Place(
                        bench,
                        cell,
                        row.Count,
                        ProofStep.AddBorders,
                        "borders",
                        $"border {border.Number}"
                    );
                }
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

    private static void Place(
        Workbench bench,
        PlacementCell cell,
        long count,
        ProofStep step,
        string table,
        string row
    )
    {
        var key = (cell.Coloring, cell.Number);
        bench.BlocksPlaced[key] = bench.BlocksPlaced.GetValueOrDefault(key) + count;
        if (!bench.Notes.Ok(bench.Index.Blocks.ContainsKey(key)))
        {
            bench.Notes.Wrong(
                step,
                table,
                row,
                "block",
                $"{cell.Coloring} {cell.Number}",
                "there is no block of that name"
            );
        }
    }
}
