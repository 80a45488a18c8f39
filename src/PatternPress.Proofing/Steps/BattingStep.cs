using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>Unpacks the batting and lays the quilt on it.</summary>
internal static class BattingStep
{
    /// <summary>
    /// Sizes batting is sold in, inches, smallest first (honeybegood.com 2012-05-01; embroiderypress.com
    /// quilt-size-101; primitivequiltsandprojects.com).
    /// </summary>
    private static readonly (string Name, long Width, long Height)[] Sold =
    [
        ("crib", 45, 60),
        ("twin", 72, 90),
        ("full", 81, 96),
        ("queen", 90, 108),
        ("king", 120, 120),
    ];

    public static void Do(Workbench bench)
    {
        Notes notes = bench.Notes;
        bool asked = bench.Drawn.Quilt.Size.Quilt.Batting;
        BattingCell? cell = bench.Tables.Requirements.Batting[bench.Size];
        if (!notes.Ok(asked == cell is not null))
        {
            Add(
                MistakeKind.Wrong,
                "batting",
                cell is null ? "none" : "some",
                asked ? "the quilt has one" : "the quilt has none"
            );
        }
        if (cell is null)
        {
            return;
        }
        notes.Same(
            ProofStep.Finish,
            "batting",
            "",
            "overhang",
            cell.Overhang,
            bench.House.BattingOverhang,
            "the house wants"
        );
        Side("width", cell.Width, bench.Column.Width);
        Side("height", cell.Height, bench.Column.Height);
        string? expected = null;
        Length narrow = Length.Min(cell.Width, cell.Height),
            wide = Length.Max(cell.Width, cell.Height);
        foreach ((string name, long width, long height) in Sold)
        {
            if (narrow <= Length.FromInches(width) && wide <= Length.FromInches(height))
            {
                expected = Told(name, Length.FromInches(width), Length.FromInches(height));
                break;
            }
        }
        string? printed = cell.Package is { } package
            ? Told(package.Name, package.Width, package.Height)
            : null;
        notes.Same(
            ProofStep.Finish,
            "batting",
            "",
            "package",
            printed,
            expected,
            "the smallest that holds the quilt is"
        );

        string Told(string name, Length width, Length height) =>
            $"{name} {notes.Told(width, height)}";

        void Side(string what, Length side, Length finished)
        {
            // What lies on it is the top before it is bound, a seam larger on every side than the finished quilt.
            Length need = finished + (bench.House.Seam * 2) + (cell.Overhang * 2);
            if (!notes.Ok(side == bench.House.Ruler.Up(need)))
            {
                Add(
                    side < need ? MistakeKind.Short : MistakeKind.Wrong,
                    what,
                    notes.Told(side),
                    $"quilt top and overhang measure {notes.Told(need)}"
                );
            }
        }

        void Add(MistakeKind kind, string what, string printed, string expected) =>
            notes.Add(kind, ProofStep.Finish, "batting", "", what, printed, expected);
    }
}
