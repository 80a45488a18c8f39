using System.Collections.Immutable;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Typesetting.Layout.Tables;

/// <summary>The columns of a table: their widths, padding included, and where their numbers line up.</summary>
/// <param name="Available">The width that was divided.</param>
/// <param name="Widths">Each column's width.</param>
/// <param name="NumberFronts">For columns of numbers, the widest front (whole number) of all cells; zero for others.</param>
/// <param name="NumberBacks">For columns of numbers, the widest rest (fraction, unit) of all cells; zero for others.</param>
sealed record TableGrid(
    Points Available,
    ImmutableArray<Points> Widths,
    ImmutableArray<Points> NumberFronts,
    ImmutableArray<Points> NumberBacks
)
{
    public Points Width => Widths.Sum();

    /// <summary>The width of a cell that starts at a column and spans some.</summary>
    public Points WidthOf(int column, int span) =>
        Widths.AsSpan().Slice(column, span).ToArray().Sum();

    public static TableGrid Measure(LayoutContext context, Table table, Points available)
    {
        var needs = Needs(context, table, out var fronts, out var backs);
        var columns = table.Columns.Select(column => column.Width).ToImmutableArray();
        var widths = ColumnWidths.Resolve(columns, needs, available);
        if (widths.Sum() > available)
        {
            context.Report(
                LayoutProblemKind.TooWide,
                $"the columns of a table need {widths.Sum()} pt, its place is {available} pt wide",
                widths.Sum(),
                available
            );
        }

        return new(available, widths, fronts, backs);
    }

    public static WidthRange WidthsOf(LayoutContext context, Table table)
    {
        var needs = Needs(context, table, out _, out _);
        var (least, natural) = (Points.Zero, Points.Zero);
        for (var i = 0; i < needs.Length; i++)
        {
            var need = table.Columns[i].Width is ColumnWidth.Fixed { Width: var width }
                ? new WidthRange(width, width)
                : needs[i];
            (least, natural) = (least + need.Least, natural + need.Natural);
        }

        return new(least, natural);
    }

    // The columns that a row's cells stand in: (cell, first column, span cut to the columns there are).
    public static IEnumerable<(TableCell Cell, int Column, int Span)> Places(
        Table table,
        TableRow row
    )
    {
        var column = 0;
        foreach (var cell in row.Cells)
        {
            if (column >= table.Columns.Length)
            {
                yield break;
            }

            var span = Math.Clamp(cell.ColumnSpan, 1, table.Columns.Length - column);
            yield return (cell, column, span);
            column += span;
        }
    }

    public static CellAlignment AlignmentOf(Table table, TableCell cell, int column) =>
        cell.Alignment ?? table.Columns[column].Alignment;

    static ImmutableArray<WidthRange> Needs(
        LayoutContext context,
        Table table,
        out ImmutableArray<Points> numberFronts,
        out ImmutableArray<Points> numberBacks
    )
    {
        var count = table.Columns.Length;
        var (needs, fronts, backs) = (new WidthRange[count], new Points[count], new Points[count]);
        var spanning = new List<(WidthRange Need, int Column, int Span)>();
        foreach (var row in table.Header.Concat(table.Rows))
        {
            foreach (var (cell, column, span) in Places(table, row))
            {
                if (
                    span == 1
                    && table.Columns[column].Width is ColumnWidth.Fixed
                    && !IsNumber(table, cell, column)
                )
                {
                    continue;
                }

                if (
                    span == 1
                    && IsNumber(table, cell, column)
                    && NumberCell.Measure(context, cell) is { } number
                )
                {
                    fronts[column] = Points.Max(fronts[column], number.Front);
                    backs[column] = Points.Max(backs[column], number.Back);
                    continue;
                }

                var need = cell.Content.Widths(context).Plus(table.Style.Padding.Across);
                if (span == 1)
                {
                    needs[column] = needs[column].Or(need);
                }
                else
                {
                    spanning.Add((need, column, span));
                }
            }
        }

        for (var i = 0; i < count; i++)
        {
            if (fronts[i] + backs[i] > Points.Zero)
            {
                var both = fronts[i] + backs[i] + table.Style.Padding.Across;
                needs[i] = needs[i].Or(new(both, both));
            }
        }

        Widen(table, needs, spanning);
        (numberFronts, numberBacks) = ([.. fronts], [.. backs]);
        return [.. needs];
    }

    // Where a spanning cell needs more than its columns do, those that are not fixed share what is missing.
    static void Widen(
        Table table,
        WidthRange[] needs,
        List<(WidthRange Need, int Column, int Span)> spanning
    )
    {
        foreach (var (need, column, span) in spanning)
        {
            var all = Enumerable.Range(column, span).ToList();
            var open = all.FindAll(i => table.Columns[i].Width is not ColumnWidth.Fixed);
            if (open.Count == 0)
            {
                continue;
            }

            var least = all.Select(i => Fixed(table, i) ?? needs[i].Least).Sum();
            var natural = all.Select(i => Fixed(table, i) ?? needs[i].Natural).Sum();
            foreach (var i in open)
            {
                needs[i] = new(
                    needs[i].Least + (Points.Max(Points.Zero, need.Least - least) / open.Count),
                    needs[i].Natural
                        + (Points.Max(Points.Zero, need.Natural - natural) / open.Count)
                );
            }
        }
    }

    static Points? Fixed(Table table, int column) =>
        table.Columns[column].Width is ColumnWidth.Fixed { Width: var width } ? width : null;

    static bool IsNumber(Table table, TableCell cell, int column) =>
        AlignmentOf(table, cell, column) is CellAlignment.Number or CellAlignment.NumberLeft;
}
