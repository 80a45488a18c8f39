using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>What one fabric must yield: strips are cut across its usable width, then cut into pieces; a piece shorter
/// than its strip is trimmed (two-stage cutting). Wanted is the least total height of strips.</summary>
/// <param name="Width">Usable width of the fabric, grid units.</param>
public sealed record CutProblem(long Width, ImmutableArray<CutPiece> Pieces)
{
    /// <summary>What may be cut up besides, before any fabric is taken.</summary>
    public ImmutableArray<Remainder> Remainders { get; init; } = [];
}
