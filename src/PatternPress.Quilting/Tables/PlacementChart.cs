using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;

namespace PatternPress.Quilting.Tables;

/// <summary>Where each block goes in one size.</summary>
/// <param name="Size">Key of the size.</param>
/// <param name="Setting">Keyword of the setting.</param>
/// <param name="Rows">From the top; each from the left.</param>
/// <param name="Sashing">Which sashing lies between; null for none.</param>
public sealed record PlacementChart(
    string Size,
    string Setting,
    ImmutableArray<ImmutableArray<PlacementCell>> Rows,
    SashingLayout? Sashing
);

/// <param name="Number">The block row's number within its coloring.</param>
public sealed record PlacementCell(string Coloring, int Number, Turn Turn);

/// <param name="Around">Whether strips run around the outside of the blocks too.</param>
/// <param name="Cornerstones">Squares where strips meet; else level strips run across the whole row.</param>
public sealed record SashingLayout(bool Around, bool Cornerstones);
