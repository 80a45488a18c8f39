using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Geometry;

/// <summary>An upright rectangle; (X, Y) is its upper left corner.</summary>
public readonly record struct Rect(Length X, Length Y, Length Width, Length Height)
{
    public Length Right => X + Width;

    public Length Bottom => Y + Height;

    public Point UpperLeft => new(X, Y);

    public Area Area => Width * Height;

    public Rect MoveBy(Point by) => new(X + by.X, Y + by.Y, Width, Height);

    public Polygon ToPolygon() =>
        new([new(X, Y), new(Right, Y), new(Right, Bottom), new(X, Bottom)]);

    /// <summary>Where this part of a <paramref name="width"/> × <paramref name="height"/> whole lands when the whole is turned.</summary>
    public Rect Turned(Turn turn, Length width, Length height) =>
        turn.Quarters switch
        {
            1 => new(height - Bottom, X, Height, Width),
            2 => new(width - Right, height - Bottom, Width, Height),
            3 => new(Y, width - Right, Height, Width),
            _ => this,
        };

    public override string ToString() =>
        $"{LengthText.Inches(Width)} × {LengthText.Inches(Height)} at {UpperLeft}";
}
