using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Finishing;

/// <summary>Straight-grain binding of one size.</summary>
/// <param name="Fabric">Fabric key.</param>
/// <param name="Cut">Id of the strips.</param>
/// <param name="StripWidth">Cut width of a strip.</param>
/// <param name="StripLength">Usable width of the fabric.</param>
/// <param name="Perimeter">Of the quilt top, raw edge to raw edge.</param>
/// <param name="Extra">For corners and the closing join.</param>
/// <param name="JoinLoss">Length a diagonal join takes: the strip's width.</param>
/// <param name="Strips">The least n with n × strip length − (n − 1) × join loss ≥ perimeter + extra.</param>
public sealed record BindingPlan(
    string Fabric,
    string Cut,
    Length StripWidth,
    Length StripLength,
    Length Perimeter,
    Length Extra,
    Length JoinLoss,
    long Strips,
    Derivation Derivation
)
{
    /// <summary>Side of the squares that bias strips are made from; null for strips across the fabric. Then the strips are those
    /// that one square gives, and their length is what it gives.</summary>
    public Length? Square { get; init; }

    /// <summary>Radius of the quilt's corners, finished; null for square ones.</summary>
    public Length? Radius { get; init; }

    public Length Needed => Perimeter + Extra;

    /// <summary>Length of the joined strips.</summary>
    public Length Available => (StripLength * Strips) - (JoinLoss * (Strips - 1));
}
