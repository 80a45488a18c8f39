using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>A piece cut around a template: to the plan it is the rectangle that the template needs, which may always lie upside down,
/// and a quarter turned only where either grain will do.</summary>
/// <param name="Width">Across the fabric, exact; the caller rounds it up to the ruler.</param>
/// <param name="Height">Along the fabric.</param>
/// <param name="Turnable">Whether it may lie a quarter turned.</param>
public sealed record OutlinePiece(Length Width, Length Height, bool Turnable)
{
    /// <param name="outline">Seam allowance included, upright as its grain runs along the fabric.</param>
    /// <param name="eitherGrain">Whether the print has no up and the piece needs no straight edge on a grain.</param>
    public static OutlinePiece Of(Polygon outline, bool eitherGrain)
    {
        Rect bounds = outline.Bounds;
        return new OutlinePiece(bounds.Width, bounds.Height, eitherGrain);
    }
}
