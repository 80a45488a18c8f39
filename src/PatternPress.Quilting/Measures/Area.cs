namespace PatternPress.Quilting.Measures;

/// <summary>
/// An exact area: a part that <see cref="Exact"/> can hold, and a part that is so many times π, from shapes with edges that are
/// parts of circles. Since π is no root of any equation in whole numbers, two areas are equal only where both parts are.
/// </summary>
/// <param name="SquareInches">The part without π.</param>
/// <param name="TimesPi">What π is multiplied by, in square inches; zero for shapes with straight edges.</param>
public readonly record struct Area(Exact SquareInches, Exact TimesPi = default) : IComparable<Area>
{
    public static Area Zero => default;

    public static Area operator +(Area a, Area b) =>
        new(a.SquareInches + b.SquareInches, a.TimesPi + b.TimesPi);

    public static Area operator -(Area a, Area b) =>
        new(a.SquareInches - b.SquareInches, a.TimesPi - b.TimesPi);

    public static Area operator *(Area a, long b) =>
        new(a.SquareInches * new Rational(b), a.TimesPi * new Rational(b));

    public static Area operator /(Area a, long b) =>
        new(a.SquareInches / new Rational(b), a.TimesPi / new Rational(b));

    public static bool operator <(Area a, Area b) => a.CompareTo(b) < 0;

    public static bool operator >(Area a, Area b) => a.CompareTo(b) > 0;

    public static bool operator <=(Area a, Area b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Area a, Area b) => a.CompareTo(b) >= 0;

    /// <summary>−1, 0 or 1. Zero is told exactly; with π in it, an area other than zero goes by its double, which no measure of a
    /// quilt brings near the rounding of doubles.</summary>
    public int Sign =>
        TimesPi == Exact.Zero ? SquareInches.Sign
        : ToDouble() < 0 ? -1
        : 1;

    public int CompareTo(Area other) => (this - other).Sign;

    /// <summary>The nearest double in square inches, for drawing and messages only.</summary>
    public double ToDouble() => SquareInches.ToDouble() + (TimesPi.ToDouble() * Math.PI);

    public override string ToString() =>
        TimesPi == Exact.Zero ? $"{SquareInches} sq in"
        : SquareInches == Exact.Zero ? $"({TimesPi})π sq in"
        : $"{SquareInches} + ({TimesPi})π sq in";
}
