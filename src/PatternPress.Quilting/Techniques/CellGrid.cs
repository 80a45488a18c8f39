using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Techniques;

/// <summary>Equal cells in rows: the layout of four-patch, nine-patch and checkerboard units.</summary>
/// <param name="Columns">Cells in a row.</param>
/// <param name="Rows">Role of each cell, row by row from the top, each row from the left.</param>
internal sealed record CellGrid(int Columns, ImmutableArray<ImmutableArray<int>> Rows)
{
    /// <summary>
    /// Whether all rows are one row of strips, closed to a tube and opened at another seam for each: every row comes from one
    /// kind of strip set.
    /// </summary>
    public bool Tube { get; init; }

    public int RoleCount => Rows.Max(row => row.Max()) + 1;

    /// <summary>Two roles alternating, role 0 in the upper left.</summary>
    public static CellGrid Alternating(int columns, int rows) =>
        new(
            columns,
            [
                .. Enumerable
                    .Range(0, rows)
                    .Select(r =>
                        Enumerable.Range(0, columns).Select(c => (r + c) % 2).ToImmutableArray()
                    ),
            ]
        );

    /// <summary>The grid of a form made by <see cref="Form"/>.</summary>
    public static CellGrid Of(UnitForm form)
    {
        string[] rows = form.Variant.Split('/');
        return new CellGrid(
            rows[0].Length,
            [.. rows.Select(row => row.Select(c => c - 'a').ToImmutableArray())]
        );
    }

    public UnitForm Form(UnitKind kind, Length width, Length height)
    {
        Length cellWidth = width / Columns,
            cellHeight = height / Rows.Length;
        var patches = ImmutableArray.CreateBuilder<RolePatch>(Columns * Rows.Length);
        for (int row = 0; row < Rows.Length; row++)
        {
            for (int column = 0; column < Columns; column++)
            {
                patches.Add(
                    new RolePatch(
                        new Rect(
                            cellWidth * column,
                            cellHeight * row,
                            cellWidth,
                            cellHeight
                        ).ToPolygon(),
                        Rows[row][column],
                        []
                    )
                );
            }
        }
        return new UnitForm(
            kind,
            string.Join('/', Rows.Select(row => string.Concat(row.Select(r => (char)('a' + r))))),
            width,
            height,
            Length.Zero,
            patches.MoveToImmutable(),
            RoleCount
        );
    }
}
