using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Resolving;

/// <summary>A block in one coloring, or a plain block.</summary>
/// <param name="Block">Null for a plain block.</param>
/// <param name="Width">Finished.</param>
/// <param name="Height">Finished.</param>
public sealed record ColoredBlock(Coloring Coloring, Block? Block, Length Width, Length Height)
{
    // Enough to tell the few blocks of a pattern apart, and much less than all of a coloring.
    public override int GetHashCode() => HashCode.Combine(Coloring.Key, Width, Height);

    public string Key => Coloring.Key;

    /// <summary>Fabric keys of a unit's roles, in role order.</summary>
    public ImmutableArray<string> FabricsOf(BlockUnit unit) =>
        [.. unit.Drawn.Parts.Select(part => Coloring.Fabrics[part])];
}
