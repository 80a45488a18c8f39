using PatternPress.Typesetting.Blocks;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Layout.Tables;

/// <summary>What a table knows of its parts on earlier pages: its tags, its column widths, how many rows are done.</summary>
sealed record TableProgress(Tag Table, Tag Head, Tag Body, int RowsDone, TableGrid? Grid)
{
    /// <summary>Whether the table began on an earlier page.</summary>
    public bool GoesOn { get; init; }

    /// <summary>The tags of a row that was divided: the row's and its cells'.</summary>
    public RowTags? OpenRow { get; init; }

    public static TableProgress Begin(Table table) =>
        new(
            new Tag(TagRole.Table) { Summary = table.Summary },
            new Tag(TagRole.TableHead),
            new Tag(TagRole.TableBody),
            0,
            null
        );
}

/// <summary>The tags of a row and its cells.</summary>
sealed record RowTags(Tag Row, Tag[] Cells)
{
    public static RowTags For(TableRow row, bool header) =>
        new(
            new Tag(TagRole.TableRow),
            [
                .. row.Cells.Select(cell => new Tag(
                    header || cell.IsHeader ? TagRole.HeaderCell : TagRole.DataCell
                )
                {
                    Scope =
                        header ? HeaderScope.Column
                        : cell.IsHeader ? HeaderScope.Row
                        : HeaderScope.None,
                    ColumnSpan = cell.ColumnSpan,
                }),
            ]
        );
}
