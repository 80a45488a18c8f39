using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;

namespace PatternPress.Quilting.Techniques;

/// <summary>
/// The shape a piece is cut to around a paper template, exactly and in true size; upright as its straight grain runs along the
/// fabric.
/// </summary>
/// <param name="Seam">Where it is sewn: the finished shape.</param>
/// <param name="Cut">Where it is cut: the seam allowance outside of it.</param>
/// <param name="Notches">Marks that are matched with those of the neighboring piece.</param>
public sealed record PieceTemplate(Polygon Seam, Polygon Cut, ImmutableArray<Notch> Notches);

/// <summary>A mark across the seam allowance.</summary>
/// <param name="OnSeam">Where it meets the seam line.</param>
/// <param name="OnCut">Where it meets the cut line.</param>
public sealed record Notch(Point OnSeam, Point OnCut);
