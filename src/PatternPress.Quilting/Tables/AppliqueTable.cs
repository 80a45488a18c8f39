using System.Collections.Immutable;

namespace PatternPress.Quilting.Tables;

/// <summary>Shapes to be traced in true size, mirrored, and fused.</summary>
/// <param name="Name">"S1".</param>
/// <param name="Unit">Number of the unit.</param>
public sealed record AppliqueTable(string Name, int Unit, ImmutableArray<AppliqueCell?> BySize);

/// <param name="Copies">Of each shape: one for each unit of the quilt.</param>
/// <param name="Shapes">In the order they are laid down, as they look from the front; numbered from 1.</param>
public sealed record AppliqueCell(long Copies, ImmutableArray<FoundationArea> Shapes);
