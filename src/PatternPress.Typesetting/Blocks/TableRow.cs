using System.Collections.Immutable;

namespace PatternPress.Typesetting.Blocks;

/// <summary>A row of a table.</summary>
public sealed record TableRow(ImmutableArray<TableCell> Cells)
{
    public TableRow(params IEnumerable<TableCell> cells)
        : this([.. cells]) { }

    /// <summary>Whether the row stays on one page with the next: rows of a group have it, except the group's last.</summary>
    public bool KeepWithNext { get; init; }

    /// <summary>Behind the whole row, instead of the table's stripes.</summary>
    public Ink? Background { get; init; }

    /// <summary>Whether a heavier rule stands above the row, where a group begins.</summary>
    public bool RuleAbove { get; init; }

    /// <summary>Where in the caller's input this row came from; handed back with layout problems.</summary>
    public object? Origin { get; init; }
}
