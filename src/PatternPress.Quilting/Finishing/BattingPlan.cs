using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Finishing;

/// <summary>The batting of one size.</summary>
/// <param name="Width">Least width: quilt and overhang.</param>
/// <param name="Height">Least height.</param>
/// <param name="Package">The smallest packaged size that holds it; null if none does.</param>
public sealed record BattingPlan(
    Length Width,
    Length Height,
    Length Overhang,
    BattingPackage? Package
)
{
    /// <summary>How the sizes came about.</summary>
    public Derivation Derivation { get; init; } = new("batting", []);
}

/// <summary>A size batting is sold in.</summary>
/// <param name="Name">The trade's word for it: "crib", "twin" …</param>
public sealed record BattingPackage(string Name, Length Width, Length Height);
