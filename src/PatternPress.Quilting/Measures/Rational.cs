using System.Numerics;

namespace PatternPress.Quilting.Measures;

/// <summary>
/// An exact fraction in lowest terms with a positive denominator. Arithmetic that would leave 64 bits throws
/// <see cref="OverflowException"/>; the source language bounds every typed number far below that.
/// </summary>
public readonly struct Rational : IEquatable<Rational>, IComparable<Rational>
{
    private readonly long _denominatorLessOne;

    public Rational(long numerator, long denominator = 1)
        : this((Int128)numerator, denominator) { }

    private Rational(Int128 numerator, Int128 denominator)
    {
        if (denominator == 0)
        {
            throw new DivideByZeroException("A fraction needs a denominator other than zero.");
        }
        if (denominator < 0)
        {
            numerator = -numerator;
            denominator = -denominator;
        }
        Int128 divisor = GreatestCommonDivisor(Int128.Abs(numerator), denominator);
        Numerator = checked((long)(numerator / divisor));
        _denominatorLessOne = checked((long)(denominator / divisor)) - 1;
    }

    public long Numerator { get; }

    public long Denominator => _denominatorLessOne + 1;

    public static Rational Zero => default;

    public static Rational One => new(1);

    public int Sign => Math.Sign(Numerator);

    public bool IsWhole => Denominator == 1;

    public static implicit operator Rational(long value) => new(value);

    public static Rational operator +(Rational a, Rational b) =>
        new(
            ((Int128)a.Numerator * b.Denominator) + ((Int128)b.Numerator * a.Denominator),
            (Int128)a.Denominator * b.Denominator
        );

    public static Rational operator -(Rational a, Rational b) => a + -b;

    public static Rational operator -(Rational a) => new(-(Int128)a.Numerator, a.Denominator);

    public static Rational operator *(Rational a, Rational b) =>
        new((Int128)a.Numerator * b.Numerator, (Int128)a.Denominator * b.Denominator);

    public static Rational operator /(Rational a, Rational b) =>
        new((Int128)a.Numerator * b.Denominator, (Int128)a.Denominator * b.Numerator);

    public static bool operator ==(Rational a, Rational b) => a.Equals(b);

    public static bool operator !=(Rational a, Rational b) => !a.Equals(b);

    public static bool operator <(Rational a, Rational b) => a.CompareTo(b) < 0;

    public static bool operator >(Rational a, Rational b) => a.CompareTo(b) > 0;

    public static bool operator <=(Rational a, Rational b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Rational a, Rational b) => a.CompareTo(b) >= 0;

    /// <summary>The greatest whole number not above this.</summary>
    public long Floor() =>
        Numerator >= 0
            ? Numerator / Denominator
            : (long)(-((-(Int128)Numerator + Denominator - 1) / Denominator));

    /// <summary>The least whole number not below this.</summary>
    public long Ceiling() => -(-this).Floor();

    public Rational Abs() => Numerator < 0 ? -this : this;

    public int CompareTo(Rational other) =>
        ((Int128)Numerator * other.Denominator).CompareTo((Int128)other.Numerator * Denominator);

    public bool Equals(Rational other) =>
        Numerator == other.Numerator && Denominator == other.Denominator;

    public override bool Equals(object? obj) => obj is Rational other && Equals(other);

    public override int GetHashCode() => HashCode.Combine(Numerator, Denominator);

    public override string ToString() => IsWhole ? $"{Numerator}" : $"{Numerator}/{Denominator}";

    /// <summary>The nearest double; for drawing and for approximate comparison in messages only.</summary>
    public double ToDouble() => (double)Numerator / Denominator;

    internal BigInteger BigNumerator => Numerator;

    internal BigInteger BigDenominator => Denominator;

    private static Int128 GreatestCommonDivisor(Int128 a, Int128 b)
    {
        // Most values fit in 64 bits, where the remainder is far cheaper.
        while (b != 0)
        {
            if (a <= long.MaxValue && b <= long.MaxValue)
            {
                long x = (long)a,
                    y = (long)b;
                while (y != 0)
                {
                    (x, y) = (y, x % y);
                }
                return x;
            }
            (a, b) = (b, a % b);
        }
        return a;
    }
}
