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
    private ImmutableArray<Symmetry> _symmetries;

    /// <summary>Shapes fused onto the patches, in the order they are laid down.</summary>
    public ImmutableArray<Overlay> Overlays { get; init; } = [];

    /// <summary>The turns after which the form looks the same but for its fabrics changing places, by quarter turns.</summary>
    public ImmutableArray<Symmetry> Symmetries
    {
        get
        {
            if (_symmetries.IsDefault)
            {
                ImmutableInterlocked.InterlockedInitialize(ref _symmetries, Symmetry.AllOf(this));
            }
            return _symmetries;
        }
    }

    /// <summary>
    /// The same unit may be had from other fabrics by role when it is turned: a half-square of A on B is one of B
    /// on A upside down. Of all such ways this is the one whose fabrics come first, so that units that are made
    /// alike are found to be.
    /// </summary>
    /// <param name="fabrics">Fabric key by role.</param>
    /// <returns>Fabric key by role, and the turn that brings the form in those fabrics to look like it does in
    /// <paramref name="fabrics"/>; a placed unit is turned by that first, then by its own turn.</returns>
    public (ImmutableArray<string> Fabrics, Turn Turn) Settle(ImmutableArray<string> fabrics)
    {
        (ImmutableArray<string> Fabrics, Turn Turn) best = (fabrics, Turn.None);
        foreach (Symmetry symmetry in Symmetries)
        {
            ImmutableArray<string> other = [.. symmetry.RoleAt.Select(role => fabrics[role])];
            if (Compare(other, best.Fabrics) < 0)
            {
                best = (other, symmetry.Turn);
            }
        }
        return best;

        static int Compare(ImmutableArray<string> a, ImmutableArray<string> b)
        {
            for (int i = 0; i < a.Length; i++)
            {
                int order = string.CompareOrdinal(a[i], b[i]);
                if (order != 0)
                {
                    return order;
                }
            }
            return 0;
        }
    }

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

/// <summary>A shape that lies on the patches of a unit, in the unit's own coordinates.</summary>
public sealed record Overlay(Polygon Shape, int Role);

/// <summary>A patch of a unit, in the unit's own coordinates (finished, origin upper left).</summary>
/// <param name="BiasEdges">Indices of edges (edge i runs from corner i to i + 1) cut on the bias by every way of
/// making the unit; a technique may add more.</param>
public sealed record RolePatch(Polygon Shape, int Role, ImmutableArray<int> BiasEdges);
