using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Resolving;

/// <summary>One border in its place.</summary>
/// <param name="Number">From 1 at the inside.</param>
/// <param name="Inside">What it goes round.</param>
public sealed record Border(
    int Number,
    BorderDesign Design,
    Rect Inside,
    ImmutableArray<BorderPiece> Pieces
)
{
    public Rect Outside =>
        new(
            Inside.X - Design.Width,
            Inside.Y - Design.Width,
            Inside.Width + (Design.Width * 2),
            Inside.Height + (Design.Width * 2)
        );
}

/// <summary>A border strip or corner square.</summary>
/// <param name="Place">Finished; of a strip with mitered ends the rectangle it lies in.</param>
public sealed record BorderPiece(BorderSide Side, Rect Place, string Fabric)
{
    /// <summary>Its shape where its ends are mitered; else null.</summary>
    public Polygon? Mitered { get; init; }

    public Polygon Outline => Mitered ?? Place.ToPolygon();
}

public enum BorderSide
{
    Left,
    Right,
    Top,
    Bottom,
    Corner,
}
