using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Kinds;

/// <summary>
/// Equal cells in two fabrics that alternate both ways; the first part lies at the upper left. Two by two cells are
/// a four-patch and three by three a nine-patch, whatever they are called. In canonical orientation the unit is
/// wider than high, or has at least as many columns as rows where it is square.
/// </summary>
public sealed class Checkerboard : UnitKind
{
    /// <summary>More cells a side than anyone would sew into one unit; bounds what a source file can ask for.</summary>
    public const int MostCells = 24;

    public static Checkerboard Kind { get; } = new();

    private Checkerboard() { }

    public override string Keyword => "checkerboard";

    public override string Name => "checkerboard unit";

    public override string Example => "checkerboard 4 x 4, ray sky";

    public override bool TryDraw(
        UnitDesign design,
        Length width,
        Length height,
        [NotNullWhen(true)] out DrawnUnit? drawn,
        [NotNullWhen(false)] out UnitProblem? problem
    )
    {
        drawn = null;
        problem = UnitWords.Unwanted(this, design, grid: true);
        if (problem is not null)
        {
            return false;
        }
        if (design.Grid is not { } grid)
        {
            problem = UnitWords.Problem(
                this,
                design.Kind.Span,
                "a checkerboard unit needs its cells, columns x rows",
                "none are written"
            );
            return false;
        }
        (int columns, int rows) = grid.Value;
        if (columns is < 2 or > MostCells || rows is < 2 or > MostCells)
        {
            problem = UnitWords.Problem(
                this,
                grid.Span,
                $"a checkerboard unit has 2 to {MostCells} cells each way",
                $"{columns} x {rows} is written",
                columns == 1 || rows == 1 ? "write a single row of cells as a rail" : null
            );
            return false;
        }
        if (
            !UnitWords.TryParts(
                this,
                design,
                2,
                2,
                "2 parts, the first in the upper left cell",
                out ImmutableArray<string> parts,
                out problem
            )
        )
        {
            return false;
        }
        drawn = Draw(columns, rows, width, height, parts);
        return true;
    }

    /// <summary>Two parts alternating over a region, in canonical orientation.</summary>
    internal static DrawnUnit Draw(
        int columns,
        int rows,
        Length width,
        Length height,
        ImmutableArray<string> parts
    )
    {
        bool turned = height > width || (height == width && rows > columns);
        if (turned)
        {
            (columns, rows, width, height) = (rows, columns, height, width);
            // Turning clockwise brings the lower left cell to the upper left.
            if (rows % 2 == 0)
            {
                parts = [parts[1], parts[0]];
            }
        }
        UnitKind kind = (columns, rows) switch
        {
            (2, 2) => FourPatch.Kind,
            (3, 3) => NinePatch.Kind,
            _ => Kind,
        };
        return new DrawnUnit(
            CellGrid.Alternating(columns, rows).Form(kind, width, height),
            new Turn(turned ? 1 : 0),
            parts
        );
    }
}
