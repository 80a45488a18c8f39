using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Finishing;

/// <summary>The backing of one size: panels as wide as the fabric, sewn side by side.</summary>
/// <param name="Fabric">Fabric key; null where the pattern leaves the choice to the maker.</param>
/// <param name="Width">Least width of the finished backing: unbound quilt top and overhang.</param>
/// <param name="Height">Least height of the finished backing.</param>
/// <param name="FabricWidth">Usable width of the backing fabric.</param>
/// <param name="PanelWidth">The same once it has shrunk.</param>
/// <param name="Panels">How many.</param>
/// <param name="PanelLength">Cut length of each panel; its width is what the fabric has once shrunk.</param>
/// <param name="Seams">Which way the seams run; none for a single panel.</param>
/// <param name="JoinLoss">Width that each seam takes from the panels together.</param>
public sealed record BackingPlan(
    string? Fabric,
    Length Width,
    Length Height,
    Length Overhang,
    Length FabricWidth,
    Length PanelWidth,
    long Panels,
    Length PanelLength,
    BackingSeams Seams,
    Length JoinLoss,
    Yardage Yardage,
    Derivation Derivation
)
{
    /// <summary>Width across the sewn panels.</summary>
    public Length Across => (PanelWidth * Panels) - (JoinLoss * (Panels - 1));
}

/// <summary>Which way the panels of a backing run.</summary>
public enum BackingSeams
{
    /// <summary>One panel, its length down the quilt.</summary>
    NoneDown,

    /// <summary>One panel, its length across the quilt.</summary>
    NoneAcross,

    /// <summary>Panels run down the quilt, seams upright.</summary>
    Upright,

    /// <summary>Panels run across the quilt, seams level.</summary>
    Level,
}
