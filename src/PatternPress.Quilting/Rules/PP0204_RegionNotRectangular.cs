using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The cells of one letter that touch each other do not form a rectangle.</summary>
public sealed class PP0204_RegionNotRectangular : ReadingRule
{
    public static PP0204_RegionNotRectangular Instance { get; } = new();

    private PP0204_RegionNotRectangular()
        : base("PP0204", Severity.Error, "Region that is not a rectangle") { }

    /// <param name="cell">The first cell of the region.</param>
    /// <param name="cells">How many cells touch.</param>
    /// <param name="columns">Width of the least rectangle around them, in cells.</param>
    /// <param name="rows">Its height.</param>
    public static Diagnostic Found(
        Span cell,
        string letter,
        string block,
        int cells,
        int columns,
        int rows
    ) =>
        Instance.Report(
            cell,
            $"the cells \"{letter}\" of block \"{block}\" do not form a rectangle",
            "this region",
            $"{cells} cells touch here; the rectangle around them has {columns} × {rows}. A unit fills a whole rectangle.",
            $"if every cell is a unit of its own, write \"each\" before its kind; else give parts of the region letters of their own"
        );
}
