using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Source;

namespace PatternPress.Quilting.Model;

/// <summary>Shapes that are fused onto a ground, drawn as path data in units of their own.</summary>
/// <param name="Columns">Units across.</param>
/// <param name="Rows">Units down.</param>
/// <param name="Shapes">In the order they are laid down: later ones lie on top.</param>
public sealed record AppliqueDesign(
    string Key,
    int Columns,
    int Rows,
    ImmutableArray<AppliqueShape> Shapes,
    Span Span
)
{
    /// <summary>Its names of fabrics in the order they are first laid down.</summary>
    public ImmutableArray<string> Roles => [.. Shapes.Select(shape => shape.Role).Distinct()];

    public bool Equals(AppliqueDesign? other) => ReferenceEquals(this, other);

    public override int GetHashCode() => Key.GetHashCode(StringComparison.Ordinal);
}

/// <param name="Role">What it is, a name of the design's own.</param>
public sealed record AppliqueShape(string Role, PathPart Outline, Span Span);
