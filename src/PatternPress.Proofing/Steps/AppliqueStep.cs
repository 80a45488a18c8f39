using PatternPress.Proofing.Shapes;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>Traces the shapes: each unit takes one of each, and laid down they are those of the drawing.</summary>
internal static class AppliqueStep
{
    private const string Technique = "fused-applique";

    public static void Do(Workbench bench)
    {
        var units = new HashSet<int>();
        for (int number = 1; number <= bench.Tables.Appliques.Length; number++)
        {
            AppliqueTable applique = bench.Tables.Appliques[number - 1];
            bench.Notes.Same(
                ProofStep.SewUnits,
                "appliqués",
                applique.Name,
                "name",
                applique.Name,
                $"S{number}",
                "appliqués count on to"
            );
            UnitTable? unit = bench.Tables.Units.FirstOrDefault(u =>
                u.Number == applique.Unit && u.Technique == Technique
            );
            if (!bench.Notes.Ok(unit is not null && units.Add(applique.Unit)))
            {
                Wrong(applique.Name, "unit", $"{applique.Unit}", "it has no shapes of its own");
                continue;
            }
            if (applique.BySize[bench.Size] is { } cell)
            {
                bench.Notes.Enough(
                    ProofStep.SewUnits,
                    "appliqués",
                    applique.Name,
                    "of each shape",
                    cell.Copies,
                    unit!.Rows.Sum(row => row.BySize[bench.Size]?.Made ?? 0),
                    "the units take"
                );
                if (!bench.Notes.Ok(IsDrawn(bench, unit, cell)))
                {
                    Wrong(
                        applique.Name,
                        "shapes",
                        $"{cell.Shapes.Length} outlines",
                        "the drawing has others on a unit of that size"
                    );
                }
            }
        }
        foreach (UnitTable unit in bench.Tables.Units)
        {
            if (unit.Technique == Technique && !bench.Notes.Ok(units.Contains(unit.Number)))
            {
                Wrong($"unit {unit.Number}", "shapes", "none", "they are fused onto it");
            }
        }

        void Wrong(string row, string what, string printed, string expected) =>
            bench.Notes.Wrong(ProofStep.SewUnits, "appliqués", row, what, printed, expected);
    }

    // Whether a unit of the drawing that is as large has just these shapes, in this order.
    private static bool IsDrawn(Workbench bench, UnitTable unit, AppliqueCell cell)
    {
        UnitCell? made = unit
            .Rows.Select(row => row.BySize[bench.Size])
            .FirstOrDefault(c => c is not null);
        return made is not null
            && bench.Drawn.Quilt.Places.Any(place =>
                (place.Block.Block?.Units ?? []).Any(drawn =>
                    drawn.Drawn.Form.Width == made.FinishedWidth
                    && drawn.Drawn.Form.Height == made.FinishedHeight
                    && drawn.Drawn.Form.Overlays.Length == cell.Shapes.Length
                    && drawn
                        .Drawn.Form.Overlays.Zip(cell.Shapes)
                        .All(pair =>
                            pair.First.Role == pair.Second.Role
                            && SewnPatch
                                .Of("", pair.First.Shape)
                                .Equals(SewnPatch.Of("", pair.Second.Shape))
                        )
                )
            );
    }
}
