namespace PatternPress.Booklet.Figures.Drafting;

/// <summary>A place in a drawing while it is being drawn; Y runs down. The unit is the drawing's own.</summary>
internal readonly record struct Spot(double X, double Y)
{
    public double Length => Math.Sqrt((X * X) + (Y * Y));

    public static Spot operator +(Spot a, Spot b) => new(a.X + b.X, a.Y + b.Y);

    public static Spot operator -(Spot a, Spot b) => new(a.X - b.X, a.Y - b.Y);

    public static Spot operator *(Spot a, double b) => new(a.X * b, a.Y * b);

    /// <summary>The point a share of the way from one place to another.</summary>
    public static Spot Between(Spot a, Spot b, double share) => a + ((b - a) * share);

    /// <summary>Twice the area of the triangle from the origin; positive when b lies clockwise of a.</summary>
    public static double Cross(Spot a, Spot b) => (a.X * b.Y) - (a.Y * b.X);

    public static double Dot(Spot a, Spot b) => (a.X * b.X) + (a.Y * b.Y);
}
