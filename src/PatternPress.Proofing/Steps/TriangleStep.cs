using PatternPress.Proofing.Shapes;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Steps;

/// <summary>Cuts the squares of side and corner triangles and sews the triangles into the edge of a quilt on point.</summary>
internal static class TriangleStep
{
    private const string Table = "triangles";

    public static void Do(Workbench bench, PointLayout layout, int across, int down)
    {
        Notes notes = bench.Notes;
        var sewn = new List<SewnPatch>();
        var seen = new HashSet<SettingPieceKind>();
        foreach (TriangleRow row in bench.Tables.Triangles)
        {
            if (row.BySize[bench.Size] is not { } cell)
            {
                continue;
            }
            bool side = row.Kind == SettingPieceKind.Side;
            string name = $"{(side ? "side" : "corner")} triangles of {row.Fabric}";
            if (!notes.Ok(seen.Add(row.Kind)))
            {
                Wrong("fabric", row.Fabric, "the triangles of that kind are told already");
                continue;
            }
            // Two rows of notches along the length, two along the width, none in the corners.
            long count = side ? (2L * (across - 1)) + (2L * (down - 1)) : 4;
            notes.Enough(
                ProofStep.LayOut,
                Table,
                name,
                "triangles",
                cell.Count,
                count,
                "the edge takes"
            );
            int each = side ? 4 : 2;
            notes.Enough(
                ProofStep.LayOut,
                Table,
                name,
                "squares",
                cell.Squares,
                (cell.Count / each) + (cell.Count % each == 0 ? 0 : 1),
                $"of each come {each}; it takes"
            );
            notes.Same(
                ProofStep.LayOut,
                Table,
                name,
                "finished edge",
                cell.Edge,
                side ? layout.SideEdge : layout.CornerEdge,
                "the notch measures"
            );
            Square(bench, row, cell, name, side);
            foreach (Polygon shape in side ? layout.Sides() : layout.Corners())
            {
                sewn.Add(SewnPatch.Of(row.Fabric, shape.Corners));
            }

            void Wrong(string what, string printed, string expected) =>
                notes.Wrong(ProofStep.LayOut, Table, name, what, printed, expected);
        }
        (SewnPatch? extra, SewnPatch? missing) = PatchSet.Difference(sewn, bench.Drawn.Triangles);
        if (!notes.Ok(extra is null && missing is null))
        {
            notes.Wrong(
                ProofStep.LayOut,
                Table,
                "",
                "layout",
                extra is null ? "fewer triangles" : $"a triangle {extra}",
                missing is null ? "the drawing has none there" : $"the drawing has {missing}"
            );
        }
    }

    // A seam on every edge moves the long edge of a right triangle out by one seam and its ends by 1 + √2; a maker adds
    // that as the ruler shows it.
    private static void Square(
        Workbench bench,
        TriangleRow row,
        TriangleCell cell,
        string name,
        bool side
    )
    {
        Notes notes = bench.Notes;
        Exact root = Exact.SquareRootOfTwo;
        Length seams = side ? bench.Seam * 2 * (root + 1) : (bench.Seam * 2) + (bench.Seam * root);
        Length square = bench.House.Ruler.Up(
            cell.Edge + bench.House.Ruler.Up(seams) + bench.House.TriangleOversize
        );
        notes.Same(ProofStep.LayOut, Table, name, "square", cell.Square, square, "it takes");
        bench.Use(cell.Cut, cell.Squares);
        if (
            bench.Take(ProofStep.LayOut, Table, name, cell.Cut, row.Fabric) is { } cut
            && !notes.Ok(cut.Width == cell.Square && cut.Height == cell.Square)
        )
        {
            notes.Wrong(
                ProofStep.LayOut,
                Table,
                name,
                "square",
                notes.Told(cell.Square),
                $"{cell.Cut} is cut {notes.Told(cut.Width, cut.Height)}"
            );
        }
    }
}
