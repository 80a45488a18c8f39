using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>Lays every piece of the cutting tables on the heap of its role and counts the heaps.</summary>
internal static class ScrapStep
{
    private const string Named = "scraps";

    public static void Do(Workbench bench)
    {
        Notes notes = bench.Notes;
        ScrapTable? printed = bench.Tables.Scraps;
        bool wanted = bench.Drawn.Quilt.Pattern.Scraps;
        if (!notes.Ok(printed is not null == wanted))
        {
            notes.Wrong(
                ProofStep.Count,
                Named,
                "",
                "table",
                printed is null ? "none" : "some",
                wanted ? "the pattern asks for it" : "the pattern asks for none"
            );
        }
        if (printed is null)
        {
            return;
        }
        var heaps = new Dictionary<(string Role, bool IsStrip, Length, Length), long>();
        var fabrics = new Dictionary<string, HashSet<string>>();
        foreach (CuttingTable table in bench.Tables.Cutting)
        {
            Fabric? fabric = bench.Drawn.Quilt.Pattern.Fabric(table.Fabric);
            string role =
                table.Use == FabricUse.Binding
                    ? "binding"
                    : fabric?.Use ?? fabric?.Name ?? table.Fabric;
            if (!fabrics.TryGetValue(role, out HashSet<string>? of))
            {
                fabrics.Add(role, of = []);
            }
            of.Add(table.Fabric);
            foreach (CutRow row in table.Rows)
            {
                if (row.BySize[bench.Size] is not { } cell)
                {
                    continue;
                }
                (Length width, Length height) = (cell.Width, cell.Height);
                // A piece that may lie either way is told longer side first.
                if (!row.WholeStrip && height > width && fabric is not { Directional: true })
                {
                    (width, height) = (height, width);
                }
                var heap = (role, row.WholeStrip, width, height);
                heaps[heap] = heaps.GetValueOrDefault(heap) + cell.Count;
            }
        }
        foreach (ScrapRow row in printed.Rows)
        {
            string name = $"{row.Role} {notes.Told(row.Width, row.Height)}";
            var heap = (row.Role, row.IsStrip, row.Width, row.Height);
            heaps.Remove(heap, out long count);
            notes.Enough(
                ProofStep.Count,
                Named,
                name,
                "pieces",
                row.BySize[bench.Size]?.Count ?? 0,
                count,
                "the cutting tables have"
            );
            if (
                !notes.Ok(
                    fabrics.TryGetValue(row.Role, out HashSet<string>? of)
                        && of.Count == row.Fabrics.Length
                        && of.SetEquals(row.Fabrics)
                )
            )
            {
                notes.Wrong(
                    ProofStep.Count,
                    Named,
                    name,
                    "fabrics",
                    string.Join(" ", row.Fabrics),
                    of is null
                        ? "no fabric is for that"
                        : $"the pattern says {string.Join(" ", of.Order(StringComparer.Ordinal))}"
                );
            }
        }
        foreach (var ((role, _, width, height), count) in heaps)
        {
            notes.Add(
                MistakeKind.Short,
                ProofStep.Count,
                Named,
                $"{role} {notes.Told(width, height)}",
                "pieces",
                "none",
                $"the cutting tables have {count}"
            );
        }
        if (heaps.Count == 0)
        {
            notes.Ok(true);
        }
    }
}
