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
        if (!notes.Ok((cell.Square is not null) == design.Bias))
        {
            notes.Wrong(
                ProofStep.Finish,
                "binding",
                "",
                "grain",
                cell.Square is null ? "straight" : "bias",
                "the drawing has it the other way"
            );
        }
        if (bench.Take(ProofStep.Finish, "binding", "", cell.Cut, cell.Fabric) is { } cut)
        {
            if (cell.Square is { } square)
            {
                Same("square", square, cut.Width, $"{cell.Cut} is cut");
                Same("square", square, cut.Height, $"{cell.Cut} is cut");
                Same(
                    "length from a square",
                    cell.StripLength,
                    bench.House.Ruler.Down(FromSquare(square, cell.StripWidth, bench.Seam)),
                    "cut round and round it gives"
                );
            }
            else
            {
                Same("strip width", cell.StripWidth, cut.Height, $"{cell.Cut} is cut");
                Same("strip length", cell.StripLength, cut.Width, "the fabric is wide");
                JoinStep.WholeStrip(bench, "binding", "", cell.Cut);
            }
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
        Length? round = quilt.Size.Quilt.RoundedCorners?.Value;
        if (!notes.Ok(cell.Radius == round))
        {
            notes.Wrong(
                ProofStep.Finish,
                "binding",
                "",
                "radius of the corners",
                cell.Radius is { } told ? notes.Told(told) : "none",
                round is { } drawn ? $"the drawing has {notes.Told(drawn)}" : "the drawing has none"
            );
        }
        if (round is { } radius)
        {
            // A circle lies between 333/106 and 355/113 of its diameter; what is printed is a mark of the ruler above it.
            Length diameter = (radius + bench.Seam) * 2;
            Length least = around - (diameter * 4) + (diameter * new Rational(333, 106));
            bool fits =
                cell.Perimeter >= least
                && cell.Perimeter - bench.House.Ruler.Step
                    <= around - (diameter * 4) + (diameter * new Rational(355, 113))
                && bench.House.Ruler.Shows(cell.Perimeter);
            if (!notes.Ok(fits))
            {
                notes.Wrong(
                    ProofStep.Finish,
                    "binding",
                    "",
                    "way around the quilt",
                    notes.Told(cell.Perimeter),
                    $"with rounded corners it measures {notes.Told(bench.House.Ruler.Up(least))}"
                );
            }
            around = cell.Perimeter;
        }
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

    /// <summary>Cuts a square along its diagonal, sews the halves to a slanting strip of cloth, and cuts that round and round: line
    /// by line, as long as a whole strip is left.</summary>
    private static Length FromSquare(Length square, Length width, Length seam)
    {
        // The seams take their allowances from the straight edges of the cloth, and so from its slanting length.
        Length line = (square - seam - seam - seam - seam) * Exact.SquareRootOfTwo;
        if (line.Sign <= 0 || width.Sign <= 0)
        {
            return Length.Zero;
        }
        Length high = square * Exact.SquareRootOfTwo / 2,
            length = Length.Zero;
        for (Length cut = width; cut <= high; cut += width)
        {
            length += line;
        }
        return length;
    }
}
