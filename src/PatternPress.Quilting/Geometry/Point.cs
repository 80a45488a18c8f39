using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Geometry;

/// <summary>An exact place. X runs right, Y runs down, as a quilt hangs on the wall.</summary>
public readonly record struct Point(Length X, Length Y)
{
    public static Point Origin => default;

    public static Point operator +(Point a, Point b) => new(a.X + b.X, a.Y + b.Y);

    public static Point operator -(Point a, Point b) => new(a.X - b.X, a.Y - b.Y);

    public override string ToString() => $"({LengthText.Inches(X)}, {LengthText.Inches(Y)})";
}
