namespace PatternPress.Quilting.Measures;

/// <summary>An exact area, held in square inches.</summary>
public readonly record struct Area(Exact SquareInches) : IComparable<Area>
{
    public static Area Zero => default;

    public static Area operator +(Area a, Area b) => new(a.SquareInches + b.SquareInches);

    public static Area operator -(Area a, Area b) => new(a.SquareInches - b.SquareInches);

    public static Area operator *(Area a, long b) => new(a.SquareInches * new Rational(b));

    public static Area operator /(Area a, long b) => new(a.SquareInches / new Rational(b));

    public static bool operator <(Area a, Area b) => a.CompareTo(b) < 0;

    public static bool operator >(Area a, Area b) => a.CompareTo(b) > 0;

    public static bool operator <=(Area a, Area b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Area a, Area b) => a.CompareTo(b) >= 0;

    public int CompareTo(Area other) => SquareInches.CompareTo(other.SquareInches);

    public override string ToString() => $"{SquareInches} sq in";
}
