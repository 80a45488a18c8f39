using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Proofing.Shapes;

/// <summary>A unit as it comes out of its recipe, once it is joined on all sides.</summary>
/// <param name="Width">Finished.</param>
/// <param name="Height">Finished.</param>
/// <param name="Patches">As the unit is pictured, each with the role whose fabric it shows.</param>
/// <param name="Fabrics">By role.</param>
internal sealed record SewnUnit(
    Length Width,
    Length Height,
    ImmutableArray<UnitPatch> Patches,
    ImmutableArray<string> Fabrics
);

/// <summary>A patch of a unit, in the unit's own finished coordinates.</summary>
internal sealed record UnitPatch(Polygon Shape, int Role);

/// <summary>A block as sewn from its parts.</summary>
/// <param name="Patches">In block coordinates, finished.</param>
internal sealed record SewnBlock(
    Length Width,
    Length Height,
    ImmutableArray<(Polygon Shape, string Fabric)> Patches
)
{
    /// <summary>The patches when the block is turned, measured from the upper left corner of its place.</summary>
    public IEnumerable<SewnPatch> Turned(Turn turn) =>
        Patches.Select(patch =>
            SewnPatch.Of(patch.Fabric, patch.Shape.Turned(turn, Width, Height))
        );
}
