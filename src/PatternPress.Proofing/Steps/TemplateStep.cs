using PatternPress.Proofing.Shapes;
using PatternPress.Proofing.Ways;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>Lays the templates on the pieces: each piece that is cut around one has it, once, in the shape that it is sewn in.</summary>
internal static class TemplateStep
{
    public static void Do(Workbench bench)
    {
        var found = new HashSet<string>();
        for (int number = 1; number <= bench.Tables.Templates.Length; number++)
        {
            TemplateTable template = bench.Tables.Templates[number - 1];
            bench.Notes.Same(
                ProofStep.SewUnits,
                "templates",
                template.Name,
                "name",
                template.Name,
                $"T{number}",
                "templates count on to"
            );
            if (template.BySize[bench.Size] is not { } cell)
            {
                continue;
            }
            if (!bench.Notes.Ok(cell.Counts.Length == template.Cuts.Length))
            {
                Wrong(
                    template.Name,
                    "pieces",
                    $"{cell.Counts.Length}",
                    $"{template.Cuts.Length} kinds are cut"
                );
                continue;
            }
            for (int i = 0; i < template.Cuts.Length; i++)
            {
                Piece(template, cell, template.Cuts[i], cell.Counts[i]);
            }
        }
        foreach ((string cut, _) in bench.TemplatesNeeded)
        {
            if (!bench.Notes.Ok(found.Contains(cut)))
            {
                Wrong(cut, "template", "none", "the piece is cut around one");
            }
        }

        void Piece(TemplateTable template, TemplateCell cell, string cut, long count)
        {
            long all = bench.Index.Cuts.TryGetValue(cut, out (CuttingTable, CutRow Row) row)
                ? row.Row.BySize[bench.Size]?.Count ?? 0
                : 0;
            long pieces = bench.TemplatePieces.GetValueOrDefault(cut, all);
            if (!bench.Notes.Ok(count == pieces))
            {
                Wrong(template.Name, $"pieces of {cut}", $"{count}", $"{pieces} are cut");
            }
            if (pieces == 0)
            {
                return;
            }
            CutPurpose purpose = row.Row.Purpose;
            bool forIt = purpose switch
            {
                CutPurpose.UnitPiece unit => unit.Piece == template.Piece
                    && unit.Unit.TrimEnd([.. "abcdefghijklmnopqrstuvwxyz"]) == $"{template.Unit}",
                CutPurpose.OnePatch patch => template.Unit is null
                    && PurposeText.Word(patch.Kind, patch.Reversed) == template.Piece,
                _ => false,
            };
            if (!bench.Notes.Ok(forIt))
            {
                Wrong(
                    template.Name,
                    "use",
                    template.Unit is { } of ? $"{template.Piece} of unit {of}" : template.Piece,
                    $"{cut} is for {purpose}"
                );
            }
            if (!bench.Notes.Ok(found.Add(cut)))
            {
                Wrong(template.Name, "pieces", cut, "it has another template");
            }
            if (!bench.Notes.Ok(bench.TemplatesNeeded.GetValueOrDefault(cut) is not null))
            {
                Wrong(template.Name, "pieces", cut, "nothing is cut from it around a template");
                return;
            }
            NeededTemplate needed = bench.TemplatesNeeded[cut]!;
            Shape(template, "seam line", cell.Shape.Seam, needed.Seam);
            Shape(template, "cut line", cell.Shape.Cut, needed.Cut);
            bool notches =
                cell.Shape.Notches.Length == needed.Notches.Length
                && cell.Shape.Notches.All(n => needed.Notches.Contains((n.OnSeam, n.OnCut)));
            if (!bench.Notes.Ok(notches))
            {
                Wrong(
                    template.Name,
                    "notches",
                    string.Join(", ", cell.Shape.Notches.Select(n => n.OnSeam)),
                    $"the neighboring piece has them at {string.Join(", ", needed.Notches.Select(n => n.OnSeam))}"
                );
            }
        }

        void Shape(TemplateTable template, string what, Polygon printed, Polygon needed)
        {
            SewnPatch one = SewnPatch.Of("", printed),
                other = SewnPatch.Of("", needed);
            if (!bench.Notes.Ok(one.Equals(other)))
            {
                Wrong(template.Name, what, $"{one}", $"the piece is{other}");
            }
        }

        void Wrong(string row, string what, string printed, string expected) =>
            bench.Notes.Wrong(ProofStep.SewUnits, "templates", row, what, printed, expected);
    }
}
