using PatternPress.Typesetting.Inlines;

namespace PatternPress.Typesetting.Blocks;

/// <summary>A cell of a table.</summary>
/// <param name="Content">What it shows.</param>
/// <param name="ColumnSpan">How many columns it takes.</param>
public sealed record TableCell(Block Content, int ColumnSpan = 1)
{
    /// <summary>A cell of plain words in the style <c>table</c>; fractions written as in "2 1/2" are set as fractions.</summary>
    public TableCell(string words)
        : this(new Text(words, "table")) { }

    /// <summary>Whether the cell heads its row (or, in a header row, its column: there every cell does).</summary>
    public bool IsHeader { get; init; }

    /// <summary>The alignment where it differs from the column's.</summary>
    public CellAlignment? Alignment { get; init; }

    public VerticalAlignment Vertical { get; init; } = VerticalAlignment.Baseline;

    public Ink? Background { get; init; }
}
