using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>Buys what the requirements say and lays the strips on it.</summary>
internal static class BuyStep
{
    public static void Do(Workbench bench)
    {
        Rows(bench, bench.Tables.Requirements.Fabrics, FabricUse.Top);
        Rows(bench, bench.Tables.Requirements.Binding, FabricUse.Binding);
        foreach (CuttingTable table in bench.Tables.Cutting)
        {
            ImmutableArray<RequirementRow> rows =
                table.Use == FabricUse.Top
                    ? bench.Tables.Requirements.Fabrics
                    : bench.Tables.Requirements.Binding;
            int count = rows.Count(row => row.Fabric == table.Fabric);
            if (!bench.Notes.Ok(count == 1))
            {
                bench.Notes.Add(
                    count == 0 ? MistakeKind.Short : MistakeKind.Wrong,
                    ProofStep.Buy,
                    Named(table.Use),
                    $"{table.Fabric}",
                    "rows",
                    $"{count}",
                    $"{TableIndex.Named(table)} cuts that fabric"
                );
            }
        }
    }

    private static void Rows(Workbench bench, ImmutableArray<RequirementRow> rows, FabricUse use)
    {
        Notes notes = bench.Notes;
        string table = Named(use);
        foreach (RequirementRow row in rows)
        {
            string name = row.Fabric ?? "";
            CuttingTable? cutting = bench.Tables.Cutting.FirstOrDefault(t =>
                t.Fabric == row.Fabric && t.Use == use
            );
            RequirementCell? cell = row.BySize[bench.Size];
            StripList? list = cutting?.BySize[bench.Size];
            if (!notes.Ok((cell is null) == (list is null)))
            {
                notes.Add(
                    cell is null ? MistakeKind.Short : MistakeKind.Wrong,
                    ProofStep.Buy,
                    table,
                    name,
                    "fabric to buy",
                    cell is null ? "none" : notes.Told(cell.Yardage.ToBuy),
                    cell is null ? "strips are cut from it" : "nothing is cut from it"
                );
            }
            if (cell is null || list is null)
            {
                continue;
            }
            Length width =
                bench.Drawn.Quilt.Pattern.Fabric(name)?.UsableWidth ?? bench.House.UsableWidth;
            Same("usable width", cell.UsableWidth, list.UsableWidth, "the cutting table has");
            if (
                !notes.Ok(
                    (cell.Panels is null) == (list.Panels is null)
                        && (cell.Panels is null)
                            == (bench.Drawn.Quilt.Pattern.Fabric(name)?.Panel is null)
                )
            )
            {
                notes.Add(
                    MistakeKind.Wrong,
                    ProofStep.Buy,
                    table,
                    name,
                    "bought as",
                    cell.Panels?.Kind ?? "yardage",
                    $"it is cut from {list.Panels?.Kind ?? "yardage"}, and the pattern says {bench.Drawn.Quilt.Pattern.Fabric(name)?.Panel?.Name ?? "yardage"}"
                );
                continue;
            }
            if (cell.Panels is { } panels && list.Panels is { } sheet)
            {
                Panels(bench, table, name, cell, panels, sheet);
                continue;
            }
            Same("usable width", cell.UsableWidth, width, "the pattern says");
            if (!notes.Ok(cell.Yardage.ToBuy >= list.Total))
            {
                Short(cell.Yardage.ToBuy, $"the strips take {notes.Told(list.Total)}");
            }
            Length need =
                (list.Total + (list.Total.Sign > 0 ? bench.House.Squaring : Length.Zero))
                * (1 + bench.House.Allowance)
                / (1 - bench.House.Shrinkage);
            Same("needed", cell.Yardage.Exactly, need, "strips and allowances take");
            Bought(bench, table, name, cell.Yardage);
            bench.Leave(
                use == FabricUse.Binding ? $"fabric {name} of the binding" : $"fabric {name}",
                cell.Yardage.ToBuy - list.Total
            );

            void Same(string what, Length printed, Length expected, string why) =>
                notes.Same(ProofStep.Buy, table, name, what, printed, expected, why);

            void Short(Length printed, string expected) =>
                notes.Add(
                    MistakeKind.Short,
                    ProofStep.Buy,
                    table,
                    name,
                    "to buy",
                    notes.Told(printed),
                    expected
                );
        }
    }

    /// <summary>As many panels are bought as are cut up, and the house's allowance; they are of the size the pattern says.
    /// </summary>
    private static void Panels(
        Workbench bench,
        string table,
        string row,
        RequirementCell cell,
        PanelsBought bought,
        PanelSheet sheet
    )
    {
        Notes notes = bench.Notes;
        Fabric fabric = bench.Drawn.Quilt.Pattern.Fabric(row)!;
        Length across = fabric.Panel!.Width ?? fabric.UsableWidth ?? bench.House.UsableWidth;
        notes.Same(
            ProofStep.Buy,
            table,
            row,
            "bought as",
            bought.Kind,
            fabric.Panel.Name,
            "the pattern says"
        );
        Same("usable width", cell.UsableWidth, across);
        Same("width", bought.Width, across);
        Same("height", bought.Height, fabric.Panel.Height);
        Same("by the yard", cell.Yardage.Exactly, Length.Zero);
        Same("by the yard", cell.Yardage.ToBuy, Length.Zero);
        Enough(bench, table, row, bought.ToBuy, sheet);

        void Same(string what, Length printed, Length expected) =>
            notes.Same(ProofStep.Buy, table, row, what, printed, expected, "the pattern says");
    }

    /// <summary>As many panels are bought as are cut up, and the house's allowance of them for mistakes.</summary>
    public static void Enough(
        Workbench bench,
        string table,
        string row,
        long toBuy,
        PanelSheet sheet
    )
    {
        long cut = 0;
        foreach (PanelRow layout in sheet.Layouts)
        {
            cut += layout.Count;
        }
        // The least whole number not below that many and the allowance.
        long most = cut;
        while (most < cut * (1 + bench.House.Allowance))
        {
            most++;
        }
        bench.Notes.Enough(
            ProofStep.Buy,
            table,
            row,
            "to buy",
            toBuy,
            most,
            "cut up and kept for mistakes are"
        );
    }

    /// <summary>What is bought covers the need, is what a shop cuts, and is the least of it.</summary>
    public static void Bought(Workbench bench, string table, string row, Yardage yardage)
    {
        Notes notes = bench.Notes;
        House house = bench.House;
        Length third = Length.FromInches(12);
        if (!notes.Ok(yardage.ToBuy >= yardage.Exactly))
        {
            Add(MistakeKind.Short, $"{notes.Told(yardage.Exactly)} are needed");
            return;
        }
        bool cut =
            house.Ruler.Step.Sign > 0
            && (
                new Ruler(house.YardStep).Shows(yardage.ToBuy)
                || (house.Thirds && new Ruler(third).Shows(yardage.ToBuy))
            );
        if (!notes.Ok(cut))
        {
            Add(MistakeKind.Wrong, $"a shop cuts in steps of {notes.Told(house.YardStep)}");
            return;
        }
        bool least =
            new Ruler(house.YardStep).Up(yardage.Exactly) >= yardage.ToBuy
            && (!house.Thirds || new Ruler(third).Up(yardage.Exactly) >= yardage.ToBuy);
        if (!notes.Ok(least))
        {
            Add(
                MistakeKind.Excess,
                $"less is enough for the {notes.Told(yardage.Exactly)} that are needed"
            );
        }

        void Add(MistakeKind kind, string expected) =>
            notes.Add(
                kind,
                ProofStep.Buy,
                table,
                row,
                "to buy",
                notes.Told(yardage.ToBuy),
                expected
            );
    }

    private static string Named(FabricUse use) =>
        use == FabricUse.Top ? "requirements" : "requirements for binding";
}
