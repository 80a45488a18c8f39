using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Settings;

/// <summary>
/// Blocks of one size edge to edge in rows and columns, with or without sashing and cornerstones.
/// </summary>
public sealed class Straight : Setting
{
    public override string Keyword => "straight";

    public override Field? Lay(Layout layout)
    {
        if (EqualBlocks.Place(layout) is not { } blocks)
        {
            return null;
        }
        int rows = blocks.Length,
            columns = blocks[0].Length;
        (ColoredBlock first, Turn firstTurn) = blocks[0][0];
        Length width = firstTurn.SwapsSides ? first.Height : first.Width,
            height = firstTurn.SwapsSides ? first.Width : first.Height;
        SashingDesign? sashing = layout.Design.Sashing;
        Length sash = sashing?.Width ?? Length.Zero;
        Length edge = sashing is { Around: true } ? sash : Length.Zero;
        Length stepX = width + sash,
            stepY = height + sash;
        var places = new List<BlockPlace>(rows * columns);
        for (int r = 0; r < rows; r++)
        {
            for (int c = 0; c < columns; c++)
            {
                var place = new Rect(edge + (stepX * c), edge + (stepY * r), width, height);
                places.Add(new BlockPlace(r, c, blocks[r][c].Block, blocks[r][c].Turn, place));
            }
        }
        Length fieldWidth = (edge * 2) + (stepX * columns) - sash;
        Length fieldHeight = (edge * 2) + (stepY * rows) - sash;
        var sashes = sashing is null
            ? []
            : Sashes(sashing, rows, columns, width, height, edge, fieldWidth).ToList();
        return new Field(
            fieldWidth,
            fieldHeight,
            [.. places],
            [.. sashes],
            [],
            StraightRows.Of(places, sashes)
        );
    }

    private static IEnumerable<Sash> Sashes(
        SashingDesign sashing,
        int rows,
        int columns,
        Length width,
        Length height,
        Length edge,
        Length fieldWidth
    )
    {
        Length sash = sashing.Width;
        string fabric = sashing.Fabric.Value;
        int first = sashing.Around ? 0 : 1;
        int lastColumn = sashing.Around ? columns : columns - 1,
            lastRow = sashing.Around ? rows : rows - 1;
        // Sash line k lies before block k; its near edge is k steps from the first, less one sash.
        Length X(int line) => edge + ((width + sash) * line) - sash;
        Length Y(int line) => edge + ((height + sash) * line) - sash;
        for (int r = 0; r < rows; r++)
        {
            for (int line = first; line <= lastColumn; line++)
            {
                var place = new Rect(X(line), Y(r) + sash, sash, height);
                yield return new Sash(SashKind.Upright, r, line, place, fabric);
            }
        }
        for (int line = first; line <= lastRow; line++)
        {
            if (sashing.Cornerstones is not { } cornerstones)
            {
                var whole = new Rect(Length.Zero, Y(line), fieldWidth, sash);
                yield return new Sash(SashKind.Row, line, 0, whole, fabric);
                continue;
            }
            for (int c = 0; c < columns; c++)
            {
                var place = new Rect(X(c) + sash, Y(line), width, sash);
                yield return new Sash(SashKind.Level, line, c, place, fabric);
            }
            for (int column = first; column <= lastColumn; column++)
            {
                var place = new Rect(X(column), Y(line), sash, sash);
                yield return new Sash(
                    SashKind.Cornerstone,
                    line,
                    column,
                    place,
                    cornerstones.Value
                );
            }
        }
    }
}
