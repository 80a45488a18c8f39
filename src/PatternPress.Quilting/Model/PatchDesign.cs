using PatternPress.Quilting.Measures;
using PatternPress.Source;

namespace PatternPress.Quilting.Model;

/// <summary>The one shape that all patches of a one-patch quilt have.</summary>
/// <param name="Height">Finished height of a row: of a triangle from base to tip, of a diamond between opposite edges, of half a
/// hexagon.</param>
public sealed record PatchDesign(PatchShape Shape, Length Height, Span Span);

/// <summary>Shapes with angles of 60 and 120 degrees, sewn in rows.</summary>
public enum PatchShape
{
    /// <summary>Equal-sided, by turns point up and point down.</summary>
    Triangle,

    /// <summary>With tips of 60 degrees; the rows lean to the right and to the left by turns.</summary>
    Diamond,

    /// <summary>Regular, each sewn as two halves in neighboring rows, so that no seam has to be set in.</summary>
    Hexagon,
}
