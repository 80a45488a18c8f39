using System.Collections.Immutable;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Tables;

/// <summary>What to buy.</summary>
/// <param name="Fabrics">For the top.</param>
/// <param name="Binding">Where it is bought apart from the top's fabrics.</param>
public sealed record RequirementsTable(
    ImmutableArray<RequirementRow> Fabrics,
    ImmutableArray<RequirementRow> Binding,
    ImmutableArray<RequirementRow> Backing,
    ImmutableArray<BattingCell?> Batting
);

/// <summary>One fabric of the requirements.</summary>
/// <param name="Fabric">Fabric key; null for a backing of the maker's choice.</param>
public sealed record RequirementRow(string? Fabric, ImmutableArray<RequirementCell?> BySize);

/// <param name="UsableWidth">The width of fabric that the yardage is computed for.</param>
/// <param name="Yardage">Exact need and what to buy.</param>
public sealed record RequirementCell(Length UsableWidth, Yardage Yardage);
