using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Source;

namespace PatternPress.Quilting.Model;

/// <summary>A block as its designer drew it: a map of cells on a grid, a unit for each region of the map.</summary>
/// <param name="Width">Finished width at the size the design names; a quilt size may use another.</param>
/// <param name="Sized">Whether the design names a size. If not, width and height only give the proportion.</param>
/// <param name="Parts">The names a coloring fills in, in the designer's order.</param>
/// <param name="Columns">Relative widths of the grid's columns.</param>
/// <param name="Rows">Relative heights of the grid's rows.</param>
/// <param name="Units">Every region of the map, row by row from the upper left.</param>
public sealed record BlockDesign(
    string Key,
    string Name,
    Length Width,
    Length Height,
    bool Sized,
    ImmutableArray<Sourced<string>> Parts,
    ImmutableArray<Rational> Columns,
    ImmutableArray<Rational> Rows,
    ImmutableArray<UnitRegion> Units,
    string? Notes,
    Span Span
)
{
    /// <summary>Blocks inside it, the outermost and those in them. Their units are among its own; the grid has their lines too.
    /// </summary>
    public ImmutableArray<InnerBlock> Inner { get; init; } = [];
}

/// <summary>A rectangle of a block's grid that is a block of its own and sewn first.</summary>
/// <param name="Key">The inner block's key.</param>
public sealed record InnerBlock(string Key, string Name, int Column, int Row, int Columns, int Rows)
{
    /// <summary>Whether a rectangle of the grid lies in it.</summary>
    public bool Holds(int column, int row, int columns, int rows) =>
        column >= Column
        && row >= Row
        && column + columns <= Column + Columns
        && row + rows <= Row + Rows;
}
