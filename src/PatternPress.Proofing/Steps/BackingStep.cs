using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>Sews the backing's panels together and lays the quilt on it.</summary>
internal static class BackingStep
{
    public static void Do(Workbench bench)
    {
        Notes notes = bench.Notes;
        House house = bench.House;
        if (!notes.Ok(bench.Tables.Backing[bench.Size] is not null))
        {
            Add(MistakeKind.Short, "backing", "none", "the quilt needs one");
            return;
        }
        BackingCell cell = bench.Tables.Backing[bench.Size]!;
        string? asked = bench.Drawn.Quilt.Size.Quilt.Backing?.Value;
        notes.Same(
            ProofStep.Finish,
            "backing",
            "",
            "fabric",
            cell.Fabric,
            asked,
            "the drawing has"
        );
        Same("overhang", cell.Overhang, house.BackingOverhang, "the house wants");
        Side("width", cell.Width, bench.Column.Width);
        Side("height", cell.Height, bench.Column.Height);
        Length loss = house.BackingSeam * 2;
        Same("width that a seam takes", cell.JoinLoss, loss, "it is");
        bool level = cell.Seams is BackingSeams.Level or BackingSeams.NoneAcross;
        (Length along, Length across) = level
            ? (cell.Width, cell.Height)
            : (cell.Height, cell.Width);
        Same("length of a panel", cell.PanelLength, along, "the backing measures that way");
        Panels(across, along, level);
        if (
            !notes.Ok(
                (cell.Panels == 1) == cell.Seams is BackingSeams.NoneDown or BackingSeams.NoneAcross
            )
        )
        {
            Add(MistakeKind.Wrong, "seams", $"{cell.Seams}", $"there are {cell.Panels} panels");
        }
        Yardage();

        void Panels(Length across, Length along, bool level)
        {
            Length sewn = (cell.FabricWidth * cell.Panels) - (loss * (cell.Panels - 1));
            if (!notes.Ok(sewn >= across && cell.Panels > 0))
            {
                Add(
                    MistakeKind.Short,
                    "panels",
                    $"{cell.Panels}",
                    $"sewn together they measure {notes.Told(sewn)} of {notes.Told(across)}"
                );
                return;
            }
            if (!notes.Ok(cell.Panels == 1 || sewn - cell.FabricWidth + loss < across))
            {
                Add(MistakeKind.Excess, "panels", $"{cell.Panels}", "one less is enough");
            }
            // The other way round must not take less fabric; where it takes as much, fewer seams, then upright ones.
            if (Needed(along) is not { } other)
            {
                return;
            }
            Length here = along * cell.Panels,
                there = across * other;
            bool better =
                there < here
                || (there == here && other < cell.Panels)
                || (there == here && other == cell.Panels && level);
            if (!notes.Ok(!better))
            {
                Add(
                    there < here ? MistakeKind.Excess : MistakeKind.Wrong,
                    "seams",
                    $"{cell.Seams}",
                    $"the other way {other} panels of {notes.Told(across)} do"
                );
            }
        }

        long? Needed(Length across)
        {
            Length sewn = cell.FabricWidth;
            long panels = 1;
            while (sewn < across)
            {
                if (cell.FabricWidth <= loss)
                {
                    return null;
                }
                sewn += cell.FabricWidth - loss;
                panels++;
            }
            return panels;
        }

        void Yardage()
        {
            RequirementRow? row = null;
            foreach (RequirementRow candidate in bench.Tables.Requirements.Backing)
            {
                if (candidate.BySize[bench.Size] is null)
                {
                    continue;
                }
                if (!notes.Ok(row is null))
                {
                    Add(
                        MistakeKind.Wrong,
                        "requirements",
                        candidate.Fabric ?? "any",
                        "another fabric is bought for it"
                    );
                }
                row ??= candidate;
            }
            if (row?.BySize[bench.Size] is not { } bought)
            {
                notes.Ok(false);
                Add(MistakeKind.Short, "requirements", "none", "fabric must be bought for it");
                return;
            }
            notes.Ok(true);
            notes.Same(
                ProofStep.Finish,
                "backing",
                "",
                "fabric bought",
                row.Fabric,
                cell.Fabric,
                "the backing is of"
            );
            if (house.Shrinkage.Sign == 0)
            {
                Same("usable width", bought.UsableWidth, cell.FabricWidth, "the panels are");
            }
            else
            {
                Length shrunk = bought.UsableWidth - (bought.UsableWidth * house.Shrinkage);
                if (
                    !notes.Ok(
                        cell.FabricWidth <= shrunk
                            && cell.FabricWidth + house.Ruler.Step > shrunk
                            && house.Ruler.Shows(cell.FabricWidth)
                    )
                )
                {
                    Add(
                        MistakeKind.Wrong,
                        "width of a panel",
                        notes.Told(cell.FabricWidth),
                        $"{notes.Told(bought.UsableWidth)} of fabric shrink to {notes.Told(shrunk)}"
                    );
                }
            }
            Length need =
                ((cell.PanelLength * cell.Panels) + house.Squaring)
                * (1 + house.Allowance)
                / (1 - house.Shrinkage);
            Same("needed", bought.Yardage.Exactly, need, "the panels and allowances take");
            BuyStep.Bought(bench, "requirements for backing", row.Fabric ?? "", bought.Yardage);
        }

        void Side(string what, Length printed, Length finished)
        {
            // What lies on it is the top before it is bound, a seam larger on every side than the finished quilt.
            Length need = finished + (bench.House.Seam * 2) + (cell.Overhang * 2);
            if (!notes.Ok(printed == house.Ruler.Up(need)))
            {
                Add(
                    printed < need ? MistakeKind.Short : MistakeKind.Wrong,
                    what,
                    notes.Told(printed),
                    $"quilt top and overhang measure {notes.Told(need)}"
                );
            }
        }

        void Same(string what, Length printed, Length expected, string why) =>
            notes.Same(ProofStep.Finish, "backing", "", what, printed, expected, why);

        void Add(MistakeKind kind, string what, string printed, string expected) =>
            notes.Add(kind, ProofStep.Finish, "backing", "", what, printed, expected);
    }
}
