using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Cutting;

/// <summary>Strips sewn end to end because what is cut from them is longer than the fabric is wide.</summary>
/// <param name="Cut">Id of the strips to join.</param>
/// <param name="StripWidth">Cut width of each.</param>
/// <param name="StripLength">Usable width of the fabric.</param>
/// <param name="Strips">How many are joined.</param>
/// <param name="Joins">How.</param>
/// <param name="JoinLoss">Length that each join takes: two seams if straight, the strip's width if diagonal.</param>
/// <param name="Pieces">What is cut from the joined strip.</param>
public sealed record JoinedStrips(
    string Cut,
    CutPurpose Purpose,
    string Fabric,
    Length StripWidth,
    Length StripLength,
    long Strips,
    JoinStyle Joins,
    Length JoinLoss,
    ImmutableArray<JoinedPiece> Pieces
)
{
    /// <summary>Length of the joined strip.</summary>
    public Length Available => (StripLength * Strips) - (JoinLoss * (Strips - 1));

    public Length Needed => Pieces.Aggregate(Length.Zero, (sum, p) => sum + (p.Length * p.Count));
}

/// <summary>A length cut from a joined strip.</summary>
/// <param name="Part">Sides or top and bottom of a border; null for sashing rows.</param>
/// <param name="Length">As cut: finished and two seams.</param>
public sealed record JoinedPiece(BorderPart? Part, Length Length, long Count);
