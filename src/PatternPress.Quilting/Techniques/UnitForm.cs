using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Techniques;

/// <summary>
/// The finished shape of a unit in canonical orientation. Two units of equal kind, variant and size are made alike
/// and can be made in one batch when their fabrics match.
/// </summary>
/// <param name="Kind">What kind of unit it is.</param>
/// <param name="Variant">What sets it apart within its kind: the corners that are flipped, a grid; "" if nothing.
/// Part of the identity, never printed.</param>
/// <param name="Width">Finished.</param>
/// <param name="Height">Finished.</param>
/// <param name="Measure">A further finished measure the kind uses (size of a flipped corner); zero if none.</param>
/// <param name="Patches">The patches that tile the unit, each with the role whose fabric it shows.</param>
/// <param name="RoleCount">Roles are numbered from 0; role 0 is the figure, the last usually the ground.</param>
public sealed record UnitForm(
    UnitKind Kind,
    string Variant,
    Length Width,
    Length Height,
    Length Measure,
    ImmutableArray<RolePatch> Patches,
    int RoleCount
)
{
    /// <summary>Kind, variant and size decide; the patches follow from them.</summary>
    public bool Equals(UnitForm? other) =>
        other is not null
        && Kind.Keyword == other.Kind.Keyword
        && Variant == other.Variant
        && Width == other.Width
        && Height == other.Height
        && Measure == other.Measure;

    public override int GetHashCode() =>
        HashCode.Combine(Kind.Keyword, Variant, Width, Height, Measure);
}

/// <summary>A patch of a unit, in the unit's own coordinates (finished, origin upper left).</summary>
/// <param name="BiasEdges">Indices of edges (edge i runs from corner i to i + 1) cut on the bias by every way of
/// making the unit; a technique may add more.</param>
public sealed record RolePatch(Polygon Shape, int Role, ImmutableArray<int> BiasEdges);
