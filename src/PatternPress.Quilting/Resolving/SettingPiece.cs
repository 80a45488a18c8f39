using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Resolving;

/// <summary>A piece that fills the edge of a setting on point: a side triangle or a corner triangle.</summary>
/// <param name="Shape">Finished, in quilt coordinates.</param>
/// <param name="Edge">Finished: the long edge of the side triangle it is cut as, a short edge of the corner triangle.</param>
public sealed record SettingPiece(SettingPieceKind Kind, Polygon Shape, string Fabric, Length Edge)
{
    public SettingPiece MovedBy(Point by) => this with { Shape = Shape.MoveBy(by) };
}

public enum SettingPieceKind
{
    /// <summary>At the end of a diagonal row, its long edge along the side of the quilt.</summary>
    Side,

    /// <summary>In a corner, its short edges along the sides of the quilt.</summary>
    Corner,
}
