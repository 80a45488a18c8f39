using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;

namespace PatternPress.Quilting.Cutting;

/// <summary>What a block in one coloring is made of, the same in every size.</summary>
/// <param name="Number">Tells the same coloring at several block sizes in one quilt apart; 1 for the largest.</param>
/// <param name="Block">The block's key; null for a plain block.</param>
/// <param name="Parts">Every region of the map, row by row; the one piece of a plain block.</param>
public sealed record BlockMakeup(
    string Coloring,
    int Number,
    string? Block,
    ImmutableArray<BlockPart> Parts
);

/// <summary>A region of a block and what fills it.</summary>
/// <param name="Letter">The letter of the map; empty for a plain block.</param>
/// <param name="Column">First column of the map's grid, from 0.</param>
/// <param name="Turn">Quarter turns from the unit's canonical orientation.</param>
/// <param name="Unit">Label of the unit class; null for a plain patch.</param>
/// <param name="Cut">Id of the cut of a plain patch; null for a unit.</param>
public sealed record BlockPart(
    string Letter,
    int Column,
    int Row,
    int Columns,
    int Rows,
    Turn Turn,
    string? Unit,
    string? Cut
);
