namespace PatternPress.Quilting.Measures;

/// <summary>
/// An exact length. Held in inches; a centimetre is exactly 50/127 in (1 in = 25.4 mm since 1959, NBS Circular 572
/// addendum).
/// </summary>
public readonly struct Length : IEquatable<Length>, IComparable<Length>
{
    public Length(Exact inches) => Inches = inches;

    public Exact Inches { get; }

    public static Length Zero => default;

    public static Length FromInches(Exact inches) => new(inches);

    public static Length FromInches(long whole, long numerator, long denominator) =>
        new(new Rational(whole) + new Rational(numerator, denominator));

    public static Length FromCentimetres(Exact centimetres) =>
        new(centimetres * CentimetreInInches);

    public static Length FromYards(Exact yards) => new(yards * 36);

    public static Rational CentimetreInInches => new(50, 127);

    public Exact Centimetres => Inches / CentimetreInInches;

    public int Sign => Inches.Sign;

    public static Length operator +(Length a, Length b) => new(a.Inches + b.Inches);

    public static Length operator -(Length a, Length b) => new(a.Inches - b.Inches);

    public static Length operator -(Length a) => new(-a.Inches);

    public static Length operator *(Length a, Rational b) => new(a.Inches * b);

    public static Length operator *(Rational a, Length b) => b * a;

    public static Length operator *(Length a, Exact b) => new(a.Inches * b);

    public static Length operator *(Length a, long b) => new(a.Inches * new Rational(b));

    public static Length operator *(long a, Length b) => b * a;

    public static Length operator /(Length a, Rational b) => new(a.Inches / b);

    public static Length operator /(Length a, long b) => new(a.Inches / new Rational(b));

    public static Area operator *(Length a, Length b) => new(a.Inches * b.Inches);

    public static bool operator ==(Length a, Length b) => a.Equals(b);

    public static bool operator !=(Length a, Length b) => !a.Equals(b);

    public static bool operator <(Length a, Length b) => a.CompareTo(b) < 0;

    public static bool operator >(Length a, Length b) => a.CompareTo(b) > 0;

    public static bool operator <=(Length a, Length b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Length a, Length b) => a.CompareTo(b) >= 0;

    public static Length Max(Length a, Length b) => a >= b ? a : b;

    public static Length Min(Length a, Length b) => a <= b ? a : b;

    /// <summary>How many whole times <paramref name="part"/> fits; both must be free of roots and part positive.</summary>
    public long CountOf(Length part)
    {
        if (part.Sign <= 0)
        {
            throw new ArgumentOutOfRangeException(
                nameof(part),
                "Only a positive length can be counted."
            );
        }
        if (Inches.IsRational && part.Inches.IsRational)
        {
            return (Inches.One / part.Inches.One).Floor();
        }
        long count = (long)Math.Floor(Inches.ToDouble() / part.Inches.ToDouble());
        while (part * count > this)
        {
            count--;
        }
        while (part * (count + 1) <= this)
        {
            count++;
        }
        return count;
    }

    public int CompareTo(Length other) => Inches.CompareTo(other.Inches);

    public bool Equals(Length other) => Inches == other.Inches;

    public override bool Equals(object? obj) => obj is Length other && Equals(other);

    public override int GetHashCode() => Inches.GetHashCode();

    /// <summary>Inches as the trade writes them where possible: "12 1/2 in"; else the exact form.</summary>
    public override string ToString() => LengthText.Inches(this) + " in";
}
