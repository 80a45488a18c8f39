namespace PatternPress.Booklet.Figures.Drafting;

/// <summary>An upright box in a drawing; (X, Y) is its upper left corner.</summary>
internal readonly record struct Box(double X, double Y, double Width, double Height)
{
    public double Right => X + Width;

    public double Bottom => Y + Height;

    public Spot Center => new(X + (Width / 2), Y + (Height / 2));

    public static Box Around(Spot center, double width, double height) =>
        new(center.X - (width / 2), center.Y - (height / 2), width, height);

    /// <summary>The least box that holds all the places; there must be at least one.</summary>
    public static Box Of(ReadOnlySpan<Spot> places)
    {
        double left = double.MaxValue,
            top = double.MaxValue,
            right = double.MinValue,
            bottom = double.MinValue;
        foreach (Spot p in places)
        {
            left = Math.Min(left, p.X);
            right = Math.Max(right, p.X);
            top = Math.Min(top, p.Y);
            bottom = Math.Max(bottom, p.Y);
        }
        return new(left, top, right - left, bottom - top);
    }

    /// <summary>Whether the two share an area; touching edges do not count.</summary>
    public bool Overlaps(Box other) =>
        X < other.Right && other.X < Right && Y < other.Bottom && other.Y < Bottom;

    public bool Holds(Box other) =>
        other.X >= X && other.Y >= Y && other.Right <= Right && other.Bottom <= Bottom;

    public bool Holds(Spot p) => p.X >= X && p.X <= Right && p.Y >= Y && p.Y <= Bottom;

    public Box Grown(double by) => new(X - by, Y - by, Width + (2 * by), Height + (2 * by));

    public Box MovedBy(Spot by) => new(X + by.X, Y + by.Y, Width, Height);

    public Box With(Box other)
    {
        double x = Math.Min(X, other.X),
            y = Math.Min(Y, other.Y);
        return new(x, y, Math.Max(Right, other.Right) - x, Math.Max(Bottom, other.Bottom) - y);
    }

    public Spot[] Corners() => [new(X, Y), new(Right, Y), new(Right, Bottom), new(X, Bottom)];
}
