using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Layout.Tables;

/// <summary>A row with its cells placed.</summary>
sealed record SetRow(TableRow Row, Fragment Fragment)
{
    public Points Height => Fragment.Height;
}

/// <summary>Places the cells of a row.</summary>
static class RowSetter
{
    /// <summary>The whole row, however tall.</summary>
    public static SetRow Set(
        LayoutContext context,
        Table table,
        TableGrid grid,
        TableRow row,
        RowTags tags
    )
    {
        var cells = new List<Placed>();
        foreach (var (cell, column, span) in TableGrid.Places(table, row))
        {
            var (x, width) = Inner(table, grid, column, span);
            var content = Untagged(cell.Content);
            if (NumberShift(context, table, grid, cell, column, span, width) is { } shift)
            {
                content = content is Text text
                    ? text with
                    {
                        Alignment = Styles.Alignment.Left,
                    }
                    : content;
                cells.Add(
                    new(cell, column, span, x + shift, Fragment(context, content, width - shift))
                );
                continue;
            }

            var aligned = Aligned(content, TableGrid.AlignmentOf(table, cell, column));
            var fragment = Fragment(context, aligned, width);
            cells.Add(
                new(
                    cell,
                    column,
                    span,
                    x + Shift(aligned, table, cell, column, width - fragment.Width),
                    fragment
                )
            );
        }

        return Build(table, grid, row, tags, cells);
    }

    /// <summary>The part of a row that fits, and the rest of it; nothing if no part fits.</summary>
    public static (SetRow Part, TableRow Remainder)? Divide(
        LayoutContext context,
        Table table,
        TableGrid grid,
        TableRow row,
        RowTags tags,
        Room room
    )
    {
        var (cells, rests) = (new List<Placed>(), new List<TableCell>());
        var divided = false;
        foreach (var (cell, column, span) in TableGrid.Places(table, row))
        {
            var (x, width) = Inner(table, grid, column, span);
            var content = Aligned(
                Untagged(cell.Content),
                TableGrid.AlignmentOf(table, cell, column)
            );
            var inner = new Room(width, room.Height - table.Style.Padding.Down, room.AtTop);
            switch (context.Fit(content, inner))
            {
                case Fit.Fits { Fragment: var all }:
                    cells.Add(new(cell, column, span, x, all));
                    rests.Add(cell with { Content = new Stack() });
                    break;
                case Fit.Splits { Fragment: var part, Rest: var rest }:
                    cells.Add(new(cell, column, span, x, part));
                    rests.Add(cell with { Content = rest });
                    divided = true;
                    break;
                default:
                    return null;
            }
        }

        return divided
            ? (Build(table, grid, row, tags, cells), row with { Cells = [.. rests] })
            : null;
    }

    sealed record Placed(TableCell Cell, int Column, int Span, Points X, Fragment Fragment);

    static (Points X, Points Width) Inner(Table table, TableGrid grid, int column, int span)
    {
        var padding = table.Style.Padding;
        return (
            grid.WidthOf(0, column) + padding.Left,
            Points.Max(Points.Zero, grid.WidthOf(column, span) - padding.Across)
        );
    }

    static Fragment Fragment(LayoutContext context, Block content, Points width) =>
        context.Fit(content, Room.Endless(width)) switch
        {
            Fit.Fits { Fragment: var all } => all,
            Fit.Splits { Fragment: var part } => part,
            _ => Layout.Fragment.Empty,
        };

    // A cell says what its only paragraph is: no paragraph inside the cell's tag is needed.
    static Block Untagged(Block content) =>
        content is Text { Role: TagRole.Paragraph } text ? text with { Role = null } : content;

    static Block Aligned(Block content, CellAlignment alignment) =>
        content is Text { Alignment: null } text
            ? text with
            {
                Alignment = alignment switch
                {
                    CellAlignment.Right => Styles.Alignment.Right,
                    CellAlignment.Centre or CellAlignment.Number => Styles.Alignment.Centre,
                    _ => Styles.Alignment.Left,
                },
            }
            : content;

    // What is not text stands as a whole left, centred or right.
    static Points Shift(Block content, Table table, TableCell cell, int column, Points left) =>
        content is Text || left <= Points.Zero
            ? Points.Zero
            : TableGrid.AlignmentOf(table, cell, column) switch
            {
                CellAlignment.Right => left,
                CellAlignment.Centre or CellAlignment.Number => left / 2,
                _ => Points.Zero,
            };

    // How far right a number starts so that its whole number ends where the others of its column do; the column of
    // numbers as a whole is centred or at the left.
    static Points? NumberShift(
        LayoutContext context,
        Table table,
        TableGrid grid,
        TableCell cell,
        int column,
        int span,
        Points width
    )
    {
        var alignment = TableGrid.AlignmentOf(table, cell, column);
        if (span > 1 || alignment is not (CellAlignment.Number or CellAlignment.NumberLeft))
        {
            return null;
        }

        var (front, back) = (grid.NumberFronts[column], grid.NumberBacks[column]);
        return front + back <= width && NumberCell.Measure(context, cell) is { } number
            ? (alignment == CellAlignment.Number ? (width - front - back) / 2 : Points.Zero)
                + front
                - number.Front
            : null;
    }

    static SetRow Build(Table table, TableGrid grid, TableRow row, RowTags tags, List<Placed> cells)
    {
        var padding = table.Style.Padding;
        var baseline = Points.Zero;
        foreach (var cell in cells.Where(cell => cell.Cell.Vertical == VerticalAlignment.Baseline))
        {
            baseline = Points.Max(baseline, cell.Fragment.FirstBaseline ?? Points.Zero);
        }

        var inner = Points.Zero;
        foreach (var cell in cells)
        {
            inner = Points.Max(inner, cell.Fragment.Height + Drop(cell));
        }

        var builder = new FragmentBuilder().Add(new PageItem.TagBegin(tags.Row));
        for (var i = 0; i < cells.Count; i++)
        {
            var cell = cells[i];
            var y =
                padding.Top
                + cell.Cell.Vertical switch
                {
                    VerticalAlignment.Middle => (inner - cell.Fragment.Height) / 2,
                    VerticalAlignment.Bottom => inner - cell.Fragment.Height,
                    _ => Drop(cell),
                };
            var region = new PageRect(
                grid.WidthOf(0, cell.Column),
                Points.Zero,
                grid.WidthOf(cell.Column, cell.Span),
                inner + padding.Down
            );
            builder
                .Add(new PageItem.TagBegin(tags.Cells[i]))
                .Add(new PageItem.RegionBegin(region, "cell"))
                .Add(cell.Fragment, cell.X, y)
                .Add(new PageItem.RegionEnd())
                .Add(new PageItem.TagEnd(tags.Cells[i]));
        }

        builder.Add(new PageItem.TagEnd(tags.Row));
        return new(row, builder.ToFragment(grid.Width, inner + padding.Down));

        Points Drop(Placed cell) =>
            cell.Cell.Vertical == VerticalAlignment.Baseline
            && cell.Fragment.FirstBaseline is { } own
                ? baseline - own
                : Points.Zero;
    }
}
