using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Techniques.Sketching;

/// <summary>Cells sewn into rows and rows into units.</summary>
internal static class GridPictures
{
    /// <summary>Two neighbours right sides together, then all patches of a row laid out in order.</summary>
    public static Sketch SewRow(Sewing sewing, ImmutableArray<int> row) =>
        new([
            Beside(sewing, row).Done(),
            sewing.Together([row[0]], [row[1]], sewing.Seam(row[0], row[1])).Done(FrameLink.Then),
        ]);

    /// <summary>A row, with the way its seams are pressed.</summary>
    /// <param name="oneWay">All to the first patch; else to every other patch, so that rows nest.</param>
    /// <param name="number">The row's number from 0: the patches pressed to alternate with it.</param>
    public static FrameDrawing PressRow(
        Sewing sewing,
        ImmutableArray<int> row,
        bool oneWay,
        int number = 0
    ) =>
        sewing.Opened(
            row,
            [
                .. Enumerable
                    .Range(1, row.Length - 1)
                    .Select(i =>
                        oneWay || (number + i - 1) % 2 == 0
                            ? (row[i], row[i - 1])
                            : (row[i - 1], row[i])
                    ),
            ]
        );

    /// <summary>Rows below each other, not yet joined.</summary>
    public static FrameDrawing RowsApart(Sewing sewing, CellGrid grid) =>
        sewing.Apart([.. Rows(grid).Select((row, i) => (row, 0, i))]);

    /// <summary>The first two rows right sides together, then the whole unit.</summary>
    public static Sketch JoinRows(Sewing sewing, CellGrid grid)
    {
        ImmutableArray<ImmutableArray<int>> rows = Rows(grid);
        return new Sketch([
            RowsApart(sewing, grid).Done(),
            sewing
                .Together(rows[0], rows[1], sewing.Seam(rows[0][0], rows[1][0]))
                .Done(FrameLink.Then),
            sewing
                .Opened(
                    sewing.All,
                    [
                        .. Enumerable
                            .Range(1, rows.Length - 1)
                            .Select(i => (rows[i][0], rows[i - 1][0])),
                    ]
                )
                .Done(FrameLink.Then),
        ]);
    }

    /// <summary>The rows of a grid as patches of its form.</summary>
    public static ImmutableArray<ImmutableArray<int>> Rows(CellGrid grid) =>
        [
            .. Enumerable
                .Range(0, grid.Rows.Length)
                .Select(r => Enumerable.Range(r * grid.Columns, grid.Columns).ToImmutableArray()),
        ];

    private static FrameDrawing Beside(Sewing sewing, ImmutableArray<int> row) =>
        sewing.Apart([.. row.Select((patch, i) => (ImmutableArray.Create(patch), i, 0))]);
}
