using System.Collections.Immutable;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Layout.Tables;

namespace PatternPress.Typesetting.Blocks;

/// <summary>
/// Rows and columns. Rows are kept whole; header rows come again on every page that the table goes on to, where they are
/// artifacts (read aloud once). A row taller than a page is divided.
/// </summary>
/// <param name="Columns">Width and alignment of each column.</param>
/// <param name="Rows">The rows below the header.</param>
public sealed record Table(ImmutableArray<TableColumn> Columns, ImmutableArray<TableRow> Rows)
    : Block
{
    /// <summary>Rows that head the columns.</summary>
    public ImmutableArray<TableRow> Header { get; init; } = [];

    public TableStyle Style { get; init; } = TableStyle.Ruled;

    /// <summary>What the table holds, in words, for those who hear it.</summary>
    public string? Summary { get; init; }

    public Points SpaceBefore { get; init; }

    public Points SpaceAfter { get; init; }

    /// <summary>What a table that goes on from an earlier page takes along.</summary>
    internal TableProgress? Continued { get; init; }

    public override Fit Fit(LayoutContext context, Room room)
    {
        var progress = Continued ?? TableProgress.Begin(this);
        var grid =
            progress.Grid is { } known && known.Available == room.Width
                ? known
                : TableGrid.Measure(context, this, room.Width);
        var setter = new TableSetter(context, this, grid, progress with { Grid = grid });
        return setter.Fit(room);
    }

    public override WidthRange Widths(LayoutContext context) => TableGrid.WidthsOf(context, this);

    public override Spacing Spacing(LayoutContext context) => new(SpaceBefore, SpaceAfter);

    public override IEnumerable<Block> Children =>
        Header.Concat(Rows).SelectMany(row => row.Cells).Select(cell => cell.Content);
}
