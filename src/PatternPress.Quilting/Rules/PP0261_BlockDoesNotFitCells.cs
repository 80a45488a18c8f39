using PatternPress.Quilting.Measures;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The cells drawn for a block do not have its measures.</summary>
public sealed class PP0261_BlockDoesNotFitCells : ReadingRule
{
    public static PP0261_BlockDoesNotFitCells Instance { get; } = new();

    private PP0261_BlockDoesNotFitCells()
        : base("PP0261", Severity.Error, "Block that does not fit its cells") { }

    /// <param name="cell">The first cell of the block.</param>
    /// <param name="width">Of the block as it is turned.</param>
    /// <param name="height">Of the block as it is turned.</param>
    /// <param name="column">Of the cell, from 0.</param>
    /// <param name="row">Of the cell, from 0.</param>
    /// <param name="across">What the cells drawn alike measure to the right of it.</param>
    /// <param name="down">What the cells drawn alike measure down from it.</param>
    public static Finding Found(
        Span cell,
        string coloring,
        string size,
        Length width,
        Length height,
        int column,
        int row,
        Length across,
        Length down
    ) =>
        new(
            Instance.Report(
                cell,
                $"the cells drawn for \"{coloring}\" do not have the block's size",
                "its upper left cell",
                hint: "draw it over columns and rows that add up to its size and all lie free, or leave out the block's size: then it fills its cells"
            ),
            size,
            $"\"{coloring}\" finishes {Wording.Measure(width, height)}; from column {column + 1}, row {row + 1} it is drawn {Wording.Measure(across)} to the right and {Wording.Measure(down)} down"
        );

    /// <param name="width">Proportion of the block without a size, as it is turned.</param>
    /// <param name="height">Proportion of the block without a size, as it is turned.</param>
    /// <param name="cellWidth">Of its first cell.</param>
    /// <param name="cellHeight">Of its first cell.</param>
    public static Finding WithoutSize(
        Span cell,
        string coloring,
        string size,
        Length width,
        Length height,
        int column,
        int row,
        Length cellWidth,
        Length cellHeight
    ) =>
        new(
            Instance.Report(
                cell,
                $"no cells drawn for \"{coloring}\" have the block's shape",
                "its upper left cell",
                hint: "draw it over columns and rows that together have the block's shape"
            ),
            size,
            $"\"{coloring}\" is {LengthText.Inches(width)} wide to {LengthText.Inches(height)} high; the cell in column {column + 1}, row {row + 1} measures {Wording.Measure(cellWidth, cellHeight)}"
        );
}
