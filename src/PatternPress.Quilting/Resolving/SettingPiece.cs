using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Resolving;

/// <summary>A piece that is no block: a side or corner triangle of a setting on point, or a patch of a one-patch quilt.</summary>
/// <param name="Shape">Finished, in quilt coordinates.</param>
/// <param name="Edge">Finished: the long edge of the side triangle it is cut as, a short edge of the corner triangle; of a
/// patch the height of its row.</param>
public sealed record SettingPiece(SettingPieceKind Kind, Polygon Shape, string Fabric, Length Edge)
{
    /// <summary>Of the end of a row, whether it is the piece turned over.</summary>
    public bool Reversed { get; init; }

    /// <summary>Of a patch, its row from the top, from 0.</summary>
    public int Row { get; init; } = -1;

    /// <summary>Its place in the row, from 0 at the left.</summary>
    public int Column { get; init; } = -1;

    /// <summary>The plain coloring it is filled with; empty for triangles on point.</summary>
    public string Coloring { get; init; } = "";

    /// <summary>Whether it is a patch of a one-patch quilt.</summary>
    public bool IsPatch => Kind >= SettingPieceKind.Triangle;

    public SettingPiece MovedBy(Point by) => this with { Shape = Shape.MoveBy(by) };
}

public enum SettingPieceKind
{
    /// <summary>At the end of a diagonal row, its long edge along the side of the quilt.</summary>
    Side,

    /// <summary>In a corner, its short edges along the sides of the quilt.</summary>
    Corner,

    /// <summary>Equal-sided, in a row of triangles.</summary>
    Triangle,

    /// <summary>Half of it, at the end of the row.</summary>
    TriangleEnd,

    /// <summary>In a row of diamonds.</summary>
    Diamond,

    /// <summary>The triangle at the end of the row.</summary>
    DiamondEnd,

    /// <summary>In a row of half hexagons.</summary>
    HalfHexagon,

    /// <summary>Half of it, at the end of the row.</summary>
    HexagonEnd,
}
