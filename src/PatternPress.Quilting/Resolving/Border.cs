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
public sealed record BorderPiece(BorderSide Side, Rect Place, string Fabric);

public enum BorderSide
{
    Left,
    Right,
    Top,
    Bottom,
    Corner,
}
