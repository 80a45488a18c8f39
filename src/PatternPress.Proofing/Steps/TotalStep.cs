using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>
/// Buys a fabric that serves several purposes at once: one total for each, which covers what the strips and the panels of
/// all of them take, and no step of the shop more.
/// </summary>
internal static class TotalStep
{
    private const string Named = "total requirements";

    /// <param name="Yards">Length that is needed, with what the house adds to it.</param>
    /// <param name="Panels">Panels that are cut up.</param>
    private sealed record Purpose(
        string Fabric,
        Length Width,
        string? Kind,
        Length Yards,
        long Panels
    );

    public static void Do(Workbench bench)
    {
        Notes notes = bench.Notes;
        List<Purpose> purposes = Purposes(bench);
        var told = new HashSet<(string, Length, string?)>();
        foreach (Purpose one in purposes)
        {
            if (!told.Add((one.Fabric, one.Width, one.Kind)))
            {
                continue;
            }
            List<Purpose> alike = purposes.FindAll(p =>
                p.Fabric == one.Fabric && p.Width == one.Width && p.Kind == one.Kind
            );
            int printed = 0;
            foreach (RequirementRow row in bench.Tables.Requirements.Totals)
            {
                if (row.BySize[bench.Size] is { } cell && IsOf(row, cell, one))
                {
                    printed++;
                    Check(bench, one, alike, cell);
                }
            }
            notes.Same(
                ProofStep.Buy,
                Named,
                one.Fabric,
                "totals",
                printed,
                alike.Count > 1 ? 1 : 0,
                $"the fabric has {alike.Count} purposes, which take"
            );
        }
        foreach (RequirementRow row in bench.Tables.Requirements.Totals)
        {
            if (
                row.BySize[bench.Size] is { } cell
                && !notes.Ok(purposes.Exists(p => IsOf(row, cell, p)))
            )
            {
                notes.Wrong(
                    ProofStep.Buy,
                    Named,
                    row.Fabric ?? "",
                    "total",
                    notes.Told(cell.Yardage.ToBuy),
                    "the quilt uses no such fabric"
                );
            }
        }
    }

    private static bool IsOf(RequirementRow row, RequirementCell cell, Purpose purpose) =>
        row.Fabric == purpose.Fabric
        && cell.UsableWidth == purpose.Width
        && cell.Panels?.Kind == purpose.Kind;

    private static List<Purpose> Purposes(Workbench bench)
    {
        House house = bench.House;
        var purposes = new List<Purpose>();
        foreach (CuttingTable table in bench.Tables.Cutting)
        {
            if (table.BySize[bench.Size] is not { } list)
            {
                continue;
            }
            long panels = 0;
            foreach (PanelRow layout in list.Panels?.Layouts ?? [])
            {
                panels += layout.Count;
            }
            purposes.Add(
                new Purpose(
                    table.Fabric,
                    list.UsableWidth,
                    list.Panels?.Kind,
                    list.Total.Sign > 0 ? With(house, list.Total) : Length.Zero,
                    panels
                )
            );
        }
        if (bench.Tables.Backing[bench.Size] is { Fabric: { } fabric } backing)
        {
            // As bought; the panels may have shrunk.
            Length? width = null;
            foreach (RequirementRow row in bench.Tables.Requirements.Backing)
            {
                width ??= row.BySize[bench.Size]?.UsableWidth;
            }
            purposes.Add(
                new Purpose(
                    fabric,
                    width ?? backing.FabricWidth,
                    null,
                    With(house, backing.PanelLength * backing.Panels),
                    0
                )
            );
        }
        return purposes;
    }

    private static Length With(House house, Length cut) =>
        (cut + house.Squaring) * (1 + house.Allowance) / (1 - house.Shrinkage);

    private static void Check(
        Workbench bench,
        Purpose one,
        List<Purpose> alike,
        RequirementCell cell
    )
    {
        Notes notes = bench.Notes;
        House house = bench.House;
        Length need = Length.Zero;
        long panels = 0;
        foreach (Purpose purpose in alike)
        {
            need += purpose.Yards;
            panels += purpose.Panels;
        }
        if (cell.Panels is not { } bought)
        {
            notes.Same(
                ProofStep.Buy,
                Named,
                one.Fabric,
                "needed",
                cell.Yardage.Exactly,
                need,
                "its purposes take together"
            );
            BuyStep.Bought(bench, Named, one.Fabric, cell.Yardage);
            return;
        }
        Panel? panel = bench.Drawn.Quilt.Pattern.Fabric(one.Fabric)?.Panel;
        notes.Same(
            ProofStep.Buy,
            Named,
            one.Fabric,
            "width",
            bought.Width,
            one.Width,
            "its purposes are cut from"
        );
        if (panel is not null)
        {
            notes.Same(
                ProofStep.Buy,
                Named,
                one.Fabric,
                "height",
                bought.Height,
                panel.Height,
                "the pattern says"
            );
        }
        notes.Same(
            ProofStep.Buy,
            Named,
            one.Fabric,
            "by the yard",
            cell.Yardage.ToBuy,
            Length.Zero,
            "it is bought in panels"
        );
        long most = panels;
        while (most < panels * (1 + house.Allowance))
        {
            most++;
        }
        notes.Enough(
            ProofStep.Buy,
            Named,
            one.Fabric,
            "to buy",
            bought.ToBuy,
            most,
            "cut up and kept for mistakes are"
        );
    }
}
