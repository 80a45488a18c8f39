using System.Collections.Immutable;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Tables;

/// <summary>Units made by the same steps.</summary>
/// <param name="Number">"Unit 1".</param>
/// <param name="Kind">Keyword of the kind of unit.</param>
/// <param name="KindName">The trade's name, singular: "flying geese unit".</param>
/// <param name="Technique">Keyword of the technique.</param>
/// <param name="TechniqueName">The trade's name, for a heading.</param>
/// <param name="Picture">The unit as drawn, in true proportion.</param>
/// <param name="Steps">The steps with their diagrams, in true proportion.</param>
/// <param name="Rows">One for each combination of fabrics.</param>
public sealed record UnitTable(
    int Number,
    string Kind,
    string KindName,
    string Technique,
    string TechniqueName,
    UnitForm Picture,
    ImmutableArray<Step> Steps,
    ImmutableArray<UnitRow> Rows
);

/// <summary>A unit in one combination of fabrics.</summary>
/// <param name="Label">"1a".</param>
/// <param name="Fabrics">Fabric key by role.</param>
/// <param name="Uses">The blocks and letters that it is for.</param>
public sealed record UnitRow(
    string Label,
    ImmutableArray<string> Fabrics,
    ImmutableArray<BlockUse> Uses,
    ImmutableArray<UnitCell?> BySize
);

/// <param name="Variant">What sets the form apart within its kind.</param>
/// <param name="FinishedWidth">In the quilt.</param>
/// <param name="FinishedHeight">In the quilt.</param>
/// <param name="UnfinishedWidth">Sewn and trimmed: the size to check.</param>
/// <param name="UnfinishedHeight">Sewn and trimmed: the size to check.</param>
/// <param name="Trim">Whether it comes out larger and is trimmed.</param>
/// <param name="Needed">Units in the quilt.</param>
/// <param name="Yield">Units from one batch.</param>
/// <param name="Batches">Batches to make.</param>
/// <param name="Made">Units made.</param>
/// <param name="Pieces">What one batch takes.</param>
/// <param name="StripSets">Strip sets to sew and cut into segments; empty for other techniques.</param>
/// <param name="Measures">Further measures that the steps quote, by name, in order of name.</param>
/// <param name="Leftovers">What one batch leaves that is worth keeping.</param>
public sealed record UnitCell(
    string Variant,
    Length FinishedWidth,
    Length FinishedHeight,
    Length UnfinishedWidth,
    Length UnfinishedHeight,
    bool Trim,
    long Needed,
    int Yield,
    long Batches,
    long Made,
    ImmutableArray<UnitPiece> Pieces,
    ImmutableArray<StripSetRow> StripSets,
    ImmutableArray<NamedLength> Measures,
    ImmutableArray<Leftover> Leftovers
);

/// <summary>A piece of a batch.</summary>
/// <param name="Cut">Id of its row in the cutting table.</param>
/// <param name="Name">Its name within the technique.</param>
/// <param name="Role">Whose fabric.</param>
/// <param name="Count">For one batch; of pieces that are sliced from strips the pieces are counted, not the strips.</param>
public sealed record UnitPiece(
    string Cut,
    string Name,
    int Role,
    int Count,
    Length Width,
    Length Height,
    PieceCut After,
    bool WholeStrip
)
{
    /// <summary>How many of it a whole strip gives where they are sliced at an angle; else 0.</summary>
    public int InStrip { get; init; }
}

/// <summary>Strips sewn side by side and cut across into segments.</summary>
/// <param name="Roles">Whose fabric each strip is, in the order they are sewn.</param>
/// <param name="Sets">Sets to sew.</param>
/// <param name="Segment">Cut width of a segment.</param>
/// <param name="Segments">Segments that the quilt needs.</param>
public sealed record StripSetRow(
    ImmutableArray<int> Roles,
    int SegmentsPerUnit,
    int SegmentsPerSet,
    long Sets,
    Length Segment,
    long Segments
);

public sealed record NamedLength(string Name, Length Value);
