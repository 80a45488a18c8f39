using System.Collections.Immutable;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;
using PatternPress.Typesetting.Inlines;
using PatternPress.Typesetting.Layout;
using PatternPress.Typesetting.Pages;
using PatternPress.Typesetting.Styles;

namespace PatternPress.Typesetting.Blocks;

/// <summary>
/// Rows and columns. Rows are kept whole; header rows come again on every page that the table goes on to, where they are
/// artifacts (read aloud once).
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

    public override Fit Fit(LayoutContext context, Room room) =>
        throw new NotImplementedException();
}
