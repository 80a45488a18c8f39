using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Source;

namespace PatternPress.Quilting.Model;

/// <summary>
/// A section sewn on a paper foundation: pieces in the order of sewing. The first covers all of it; each further one covers what
/// lies beyond its seam line, whatever was there before.
/// </summary>
/// <param name="Columns">Units across, in which its lines are drawn.</param>
/// <param name="Rows">Units down.</param>
public sealed record FoundationDesign(
    string Key,
    int Columns,
    int Rows,
    ImmutableArray<FoundationPiece> Pieces,
    Span Span
)
{
    /// <summary>Its names of fabrics in the order they are first sewn.</summary>
    public ImmutableArray<string> Roles => [.. Pieces.Select(piece => piece.Role).Distinct()];

    public bool Equals(FoundationDesign? other) => ReferenceEquals(this, other);

    public override int GetHashCode() => Key.GetHashCode(StringComparison.Ordinal);
}

/// <param name="Role">What it is, a name of the foundation's own.</param>
/// <param name="Line">Two places on its seam line, in units: the piece lies on the left hand of one going from the first to the
/// second. Null for the first piece.</param>
public sealed record FoundationPiece(
    string Role,
    ((Rational X, Rational Y) From, (Rational X, Rational Y) To)? Line,
    Span Span
);
