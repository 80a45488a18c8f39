using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>Counts the papers: each section that is sewn takes one, and each unit sewn on paper has its own.</summary>
internal static class FoundationStep
{
    public static void Do(Workbench bench)
    {
        var units = new HashSet<int>();
        for (int number = 1; number <= bench.Tables.Foundations.Length; number++)
        {
            FoundationTable foundation = bench.Tables.Foundations[number - 1];
            bench.Notes.Same(
                ProofStep.SewUnits,
                "foundations",
                foundation.Name,
                "name",
                foundation.Name,
                $"F{number}",
                "foundations count on to"
            );
            UnitTable? unit = bench.Tables.Units.FirstOrDefault(u =>
                u.Number == foundation.Unit && u.Technique == "foundation-paper"
            );
            if (!bench.Notes.Ok(unit is not null && units.Add(foundation.Unit)))
            {
                Wrong(
                    foundation.Name,
                    "unit",
                    $"{foundation.Unit}",
                    "it is not sewn on a paper of its own"
                );
                continue;
            }
            if (foundation.BySize[bench.Size] is { } cell)
            {
                bench.Notes.Enough(
                    ProofStep.SewUnits,
                    "foundations",
                    foundation.Name,
                    "papers",
                    cell.Copies,
                    unit!.Rows.Sum(row => row.BySize[bench.Size]?.Made ?? 0),
                    "the sections take"
                );
            }
        }
        foreach (UnitTable unit in bench.Tables.Units)
        {
            if (
                unit.Technique == "foundation-paper"
                && !bench.Notes.Ok(units.Contains(unit.Number))
            )
            {
                Wrong($"unit {unit.Number}", "foundation", "none", "it is sewn on paper");
            }
        }

        void Wrong(string row, string what, string printed, string expected) =>
            bench.Notes.Wrong(ProofStep.SewUnits, "foundations", row, what, printed, expected);
    }
}
