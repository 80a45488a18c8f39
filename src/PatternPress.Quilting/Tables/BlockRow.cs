using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Tables;

/// <summary>A block in one coloring, or a plain block.</summary>
/// <param name="Number">1, unless one quilt uses the coloring at several block sizes.</param>
/// <param name="Block">The block's key; null for a plain block.</param>
/// <param name="Name">The block's name; empty for a plain block.</param>
/// <param name="Columns">Relative widths of the grid's columns; empty for a plain block.</param>
/// <param name="Rows">Relative heights of the grid's rows.</param>
/// <param name="Parts">What fills the grid, row by row.</param>
/// <param name="Inner">Blocks inside it, each sewn by itself before the parts beside it.</param>
public sealed record BlockRow(
    string Coloring,
    int Number,
    string? Block,
    string Name,
    ImmutableArray<Rational> Columns,
    ImmutableArray<Rational> Rows,
    ImmutableArray<BlockPart> Parts,
    ImmutableArray<BlockCell?> BySize,
    ImmutableArray<InnerBlockRow> Inner
);

/// <summary>A block inside a block, by its place on the grid.</summary>
/// <param name="Block">The inner block's key.</param>
public sealed record InnerBlockRow(
    string Block,
    string Name,
    int Column,
    int Row,
    int Columns,
    int Rows,
    ImmutableArray<InnerBlockCell?> BySize
);

public sealed record InnerBlockCell(Length UnfinishedWidth, Length UnfinishedHeight);

/// <param name="Count">Blocks to make.</param>
public sealed record BlockCell(
    long Count,
    Length FinishedWidth,
    Length FinishedHeight,
    Length UnfinishedWidth,
    Length UnfinishedHeight
);
