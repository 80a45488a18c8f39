namespace PatternPress.Typesetting.Drawings;

/// <summary>A point of a drawing in the drawing's own units: x to the right, y down.</summary>
public readonly record struct XY(double X, double Y)
{
    public static XY operator +(XY a, XY b) => new(a.X + b.X, a.Y + b.Y);

    public static XY operator -(XY a, XY b) => new(a.X - b.X, a.Y - b.Y);

    public static XY operator *(XY a, double times) => new(a.X * times, a.Y * times);

    /// <summary>The distance from (0, 0).</summary>
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    /// <summary>The point a share of the way to another: 0 is this one, 1 the other.</summary>
    public XY Towards(XY other, double share) =>
        new(X + ((other.X - X) * share), Y + ((other.Y - Y) * share));
}
