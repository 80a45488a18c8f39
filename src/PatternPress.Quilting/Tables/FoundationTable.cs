using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;

namespace PatternPress.Quilting.Tables;

/// <summary>A section to be printed in true size, mirrored, and sewn on.</summary>
/// <param name="Name">"F1".</param>
/// <param name="Unit">Number of the unit.</param>
public sealed record FoundationTable(string Name, int Unit, ImmutableArray<FoundationCell?> BySize);

/// <param name="Copies">Papers to print: one for each section of the quilt.</param>
/// <param name="Areas">In the order of sewing, as the section looks from the front; numbered from 1.</param>
public sealed record FoundationCell(long Copies, ImmutableArray<FoundationArea> Areas);

/// <param name="Shape">Finished, in the section's own coordinates.</param>
/// <param name="Role">Whose fabric.</param>
public sealed record FoundationArea(Polygon Shape, int Role);
