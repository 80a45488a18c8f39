using PatternPress.Source;

namespace PatternPress.Quilting.Model;

/// <summary>A rectangle of cells in a block's map and the unit that fills it.</summary>
/// <param name="Span">The place of its first cell in the map.</param>
public sealed record UnitRegion(
    UnitDesign Design,
    int Column,
    int Row,
    int Columns,
    int Rows,
    Span Span
)
{
    /// <summary>How the inner block that the unit belongs to is turned.</summary>
    public Geometry.Turn Turn { get; init; }
}
