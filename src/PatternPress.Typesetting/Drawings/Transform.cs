namespace PatternPress.Typesetting.Drawings;

/// <summary>
/// An affine map of the plane: (x, y) goes to (A·x + C·y + E, B·x + D·y + F). The letters are those of PDF and SVG.
/// </summary>
public readonly record struct Transform(double A, double B, double C, double D, double E, double F)
{
    public static readonly Transform Identity = new(1, 0, 0, 1, 0, 0);

    public static Transform Move(double x, double y) => new(1, 0, 0, 1, x, y);

    public static Transform Scale(double factor) => new(factor, 0, 0, factor, 0, 0);

    public static Transform Scale(double x, double y) => new(x, 0, 0, y, 0, 0);

    /// <summary>Turns by degrees about (0, 0), clockwise as seen on paper since y points down. Quarter turns are exact.</summary>
    public static Transform Turn(double degrees)
    {
        var (sin, cos) = (((degrees % 360) + 360) % 360) switch
        {
            0 => (0.0, 1.0),
            90 => (1.0, 0.0),
            180 => (0.0, -1.0),
            270 => (-1.0, 0.0),
            var other => Math.SinCos(other * Math.PI / 180),
        };
        return new(cos, sin, -sin, cos, 0, 0);
    }

    /// <summary>Turns by degrees about a point.</summary>
    public static Transform Turn(double degrees, XY about) =>
        Move(-about.X, -about.Y).Then(Turn(degrees)).Then(Move(about.X, about.Y));

    /// <summary>Mirrors left and right about the vertical line at x.</summary>
    public static Transform MirrorAcross(double x) => new(-1, 0, 0, 1, 2 * x, 0);

    /// <summary>Mirrors top and bottom about the horizontal line at y.</summary>
    public static Transform MirrorDown(double y) => new(1, 0, 0, -1, 0, 2 * y);

    /// <summary>This map followed by another.</summary>
    public Transform Then(Transform next) =>
        new(
            (next.A * A) + (next.C * B),
            (next.B * A) + (next.D * B),
            (next.A * C) + (next.C * D),
            (next.B * C) + (next.D * D),
            (next.A * E) + (next.C * F) + next.E,
            (next.B * E) + (next.D * F) + next.F
        );

    public XY Apply(XY point) =>
        new((A * point.X) + (C * point.Y) + E, (B * point.X) + (D * point.Y) + F);

    /// <summary>How many times larger areas' sides become: the square root of the determinant's size.</summary>
    public double Magnification => Math.Sqrt(Math.Abs((A * D) - (B * C)));
}
