using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>Joins the binding and lays it around the quilt.</summary>
internal static class BindingStep
{
    /// <summary>Four mitred corners and the closing join take no less (sources give 10 to 15 in).</summary>
    private static readonly Length Least = Length.FromInches(10);

    public static void Do(Workbench bench)
    {
        Quilt quilt = bench.Drawn.Quilt;
        BindingDesign? design = quilt.Size.Quilt.Binding;
        BindingCell? cell = bench.Tables.Binding[bench.Size];
        Notes notes = bench.Notes;
        if (!notes.Ok((cell is null) == (design is null)))
        {
            notes.Wrong(
                ProofStep.Finish,
                "binding",
                "",
                "binding",
                cell is null ? "none" : cell.Fabric,
                $"the drawing has {design?.Fabric.Value ?? "none"}"
            );
        }
        if (cell is null || design is null)
        {
            return;
        }
        notes.Same(
            ProofStep.Finish,
            "binding",
            "",
            "fabric",
            cell.Fabric,
            design.Fabric.Value,
            "the drawing has"
        );
        bench.Use(cell.Cut, cell.Strips);
        if (bench.Take(ProofStep.Finish, "binding", "", cell.Cut, cell.Fabric) is { } cut)
        {
            Same("strip width", cell.StripWidth, cut.Height, $"{cell.Cut} is cut");
            Same("strip length", cell.StripLength, cut.Width, "the fabric is wide");
            JoinStep.WholeStrip(bench, "binding", "", cell.Cut);
        }
        Length asked = design.Width ?? bench.House.BindingWidth;
        if (!notes.Ok(cell.StripWidth == bench.House.Ruler.Up(asked)))
        {
            notes.Wrong(
                ProofStep.Finish,
                "binding",
                "",
                "strip width",
                notes.Told(cell.StripWidth),
                $"the binding asked for is cut {notes.Told(asked)}"
            );
        }
        // Along the raw edge, which lies a seam outside the finished quilt.
        Length seams = bench.House.Seam * 2;
        Length around = (bench.Column.Width + seams + bench.Column.Height + seams) * 2;
        Same("way around the quilt", cell.Perimeter, around, "it measures");
        // Ends that cross at a right angle each give half a width.
        Same("length that a join takes", cell.JoinLoss, cell.StripWidth, "on the diagonal it is");
        JoinStep.Long(
            bench,
            "binding",
            "",
            cell.Strips,
            cell.StripLength,
            cell.JoinLoss,
            cell.Length,
            around + Length.Min(Least, bench.House.BindingExtra),
            around + bench.House.BindingExtra
        );

        void Same(string what, Length printed, Length expected, string why) =>
            notes.Same(ProofStep.Finish, "binding", "", what, printed, expected, why);
    }
}
