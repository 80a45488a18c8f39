using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>Buys panels instead of yardage where the pattern promises that they do, and cuts the same pieces from them.</summary>
internal static class SubstituteStep
{
    private const string Named = "substitutes";

    public static void Do(Workbench bench)
    {
        Notes notes = bench.Notes;
        Pattern pattern = bench.Drawn.Quilt.Pattern;
        SubstituteTable? printed = bench.Tables.Substitute;
        if (pattern.Suits is not { } promise)
        {
            if (!notes.Ok(printed is null))
            {
                notes.Wrong(ProofStep.Buy, Named, "", "table", "some", "the pattern promises none");
            }
            return;
        }
        foreach (CuttingTable table in bench.Tables.Cutting)
        {
            if (
                table.Use != FabricUse.Top
                || pattern.Fabric(table.Fabric) is not { } fabric
                || !promise.Includes(fabric)
            )
            {
                continue;
            }
            int rows = 0;
            foreach (SubstituteRow row in printed?.Rows ?? [])
            {
                if (row.Fabric == table.Fabric)
                {
                    rows++;
                    Row(bench, table, row, promise.Panel);
                }
            }
            notes.Same(
                ProofStep.Buy,
                Named,
                $"fabric {table.Fabric}",
                "rows",
                rows,
                1,
                "the pattern promises"
            );
        }
        if (printed is null)
        {
            return;
        }
        foreach (SubstituteRow row in printed.Rows)
        {
            Fabric? fabric = pattern.Fabric(row.Fabric);
            if (!notes.Ok(fabric is not null && promise.Includes(fabric)))
            {
                notes.Wrong(
                    ProofStep.Buy,
                    Named,
                    $"fabric {row.Fabric}",
                    "fabric",
                    row.Fabric,
                    "the pattern promises nothing of it"
                );
            }
        }
        notes.Same(
            ProofStep.Buy,
            Named,
            "",
            "bought as",
            printed.Kind,
            promise.Panel.Name,
            "the pattern says"
        );
        notes.Same(
            ProofStep.Buy,
            Named,
            "",
            "height",
            printed.Height,
            promise.Panel.Height,
            "the pattern says"
        );
        if (promise.Panel.Width is { } width)
        {
            Width(bench, "", printed.Width, width);
        }
    }

    private static void Row(Workbench bench, CuttingTable table, SubstituteRow row, Panel panel)
    {
        SubstituteCell? cell = row.BySize[bench.Size];
        bool cuts = table.BySize[bench.Size] is not null;
        if (!bench.Notes.Ok(cell is not null == cuts))
        {
            bench.Notes.Add(
                cell is null ? MistakeKind.Short : MistakeKind.Wrong,
                ProofStep.Buy,
                Named,
                $"fabric {row.Fabric}",
                "to buy",
                cell is null ? "none" : $"{cell.ToBuy}",
                cuts ? "pieces are cut from it" : "nothing is cut from it"
            );
        }
        if (cell is null)
        {
            return;
        }
        CutStep.FromPanels(bench, table, cell.Strips, panel);
        Fabric fabric = bench.Drawn.Quilt.Pattern.Fabric(row.Fabric)!;
        Length width = panel.Width ?? fabric.UsableWidth ?? bench.House.UsableWidth;
        Width(bench, $"fabric {row.Fabric}", cell.Strips.UsableWidth, width);
        if (panel.Width is null)
        {
            Width(bench, "", bench.Tables.Substitute!.Width, width);
        }
        if (bench.Notes.Ok(cell.Strips.Panels is not null))
        {
            BuyStep.Enough(bench, Named, $"fabric {row.Fabric}", cell.ToBuy, cell.Strips.Panels!);
        }
        else
        {
            bench.Notes.Wrong(
                ProofStep.Cut,
                Named,
                $"fabric {row.Fabric}",
                "cut from",
                "the length of fabric",
                $"the pattern promises {panel.Name}"
            );
        }
    }

    private static void Width(Workbench bench, string row, Length printed, Length expected) =>
        bench.Notes.Same(ProofStep.Buy, Named, row, "width", printed, expected, "the pattern says");
}
