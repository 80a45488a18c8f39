using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Ways;

/// <summary>The unit that is asked for.</summary>
/// <param name="Variant">What sets it apart within its kind.</param>
/// <param name="Width">Finished.</param>
/// <param name="Height">Finished.</param>
/// <param name="Roles">How many fabrics it has.</param>
/// <param name="StripLength">Of strips of the narrowest of its fabrics.</param>
/// <param name="Corner">Finished leg of a flipped corner; zero for other kinds.</param>
/// <param name="Ruler">The marks that sizes are read off at.</param>
/// <param name="Radius">Finished radius of a quarter circle; zero for other kinds.</param>
/// <param name="Areas">Of a section sewn on paper, as its foundation is printed; none for other kinds.</param>
/// <param name="Shapes">Of an appliqué, the shapes that are laid down, as printed; none for other kinds.</param>
internal sealed record UnitOrder(
    string Variant,
    Length Width,
    Length Height,
    int Roles,
    Length Seam,
    Length StripLength,
    Length Corner,
    Ruler Ruler,
    Length Radius,
    ImmutableArray<FoundationArea> Areas,
    ImmutableArray<FoundationArea> Shapes
);
