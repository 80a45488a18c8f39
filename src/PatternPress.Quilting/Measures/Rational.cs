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
    {
        if (denominator == 1)
        {
            Numerator = numerator;
            return;
        }
        if (denominator == 0)
        {
            throw new DivideByZeroException("A fraction needs a denominator other than zero.");
        }
        if (numerator == long.MinValue || denominator == long.MinValue)
        {
            this = Wide.Reduce(numerator, denominator);
            return;
        }
        if (denominator < 0)
        {
            numerator = -numerator;
            denominator = -denominator;
        }
        long divisor = GreatestCommonDivisor(Math.Abs(numerator), denominator);
        Numerator = numerator / divisor;
        _denominatorLessOne = (denominator / divisor) - 1;
    }

    private Rational(long numerator, long denominatorLessOne, bool _)
    {
        Numerator = numerator;
        _denominatorLessOne = denominatorLessOne;
    }

    public long Numerator { get; }

    public long Denominator => _denominatorLessOne + 1;

    public static Rational Zero => default;

    public static Rational One => new(1);

    public int Sign => Math.Sign(Numerator);

    public bool IsWhole => Denominator == 1;

    public static implicit operator Rational(long value) => new(value);

    public static Rational operator +(Rational a, Rational b) =>
        AreSmall(a, b)
            ? Sum(a.Numerator, b.Numerator, a.Denominator, b.Denominator)
            : Wide.Add(a, b);

    public static Rational operator -(Rational a, Rational b) =>
        AreSmall(a, b)
            ? Sum(a.Numerator, -b.Numerator, a.Denominator, b.Denominator)
            : Wide.Add(a, -b);

    public static Rational operator -(Rational a) =>
        new(checked(-a.Numerator), a._denominatorLessOne, true);

    public static Rational operator *(Rational a, Rational b) =>
        AreSmall(a, b)
            ? new(a.Numerator * b.Numerator, a.Denominator * b.Denominator)
            : Wide.Multiply(a, b);

    public static Rational operator /(Rational a, Rational b) =>
        AreSmall(a, b)
            ? new(a.Numerator * b.Denominator, a.Denominator * b.Numerator)
            : Wide.Divide(a, b);

    public static bool operator ==(Rational a, Rational b) => a.Equals(b);

    public static bool operator !=(Rational a, Rational b) => !a.Equals(b);

    public static bool operator <(Rational a, Rational b) => a.CompareTo(b) < 0;

    public static bool operator >(Rational a, Rational b) => a.CompareTo(b) > 0;

    public static bool operator <=(Rational a, Rational b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Rational a, Rational b) => a.CompareTo(b) >= 0;

    /// <summary>The greatest whole number not above this.</summary>
    public long Floor() =>
        Numerator >= 0 || Numerator % Denominator == 0
            ? Numerator / Denominator
            : (Numerator / Denominator) - 1;

    /// <summary>The least whole number not below this.</summary>
    public long Ceiling() => -(-this).Floor();

    public Rational Abs() => Numerator < 0 ? -this : this;

    /// <summary>The largest fraction of which both are whole multiples; of 0 and a number, the number without its sign.</summary>
    public Rational CommonMeasure(Rational other)
    {
        long parts = checked(
            Denominator / GreatestCommonDivisor(Denominator, other.Denominator) * other.Denominator
        );
        return new(
            GreatestCommonDivisor(
                Math.Abs(checked(Numerator * (parts / Denominator))),
                Math.Abs(checked(other.Numerator * (parts / other.Denominator)))
            ),
            parts
        );
    }

    public int CompareTo(Rational other) =>
        _denominatorLessOne == other._denominatorLessOne ? Numerator.CompareTo(other.Numerator)
        : AreSmall(this, other)
            ? (Numerator * other.Denominator).CompareTo(other.Numerator * Denominator)
        : Wide.Compare(this, other);

    public bool Equals(Rational other) =>
        Numerator == other.Numerator && _denominatorLessOne == other._denominatorLessOne;

    public override bool Equals(object? obj) => obj is Rational other && Equals(other);

    public override int GetHashCode() => HashCode.Combine(Numerator, Denominator);

    public override string ToString() => IsWhole ? $"{Numerator}" : $"{Numerator}/{Denominator}";

    /// <summary>The nearest double; for drawing and for approximate comparison in messages only.</summary>
    public double ToDouble() => (double)Numerator / Denominator;

    internal BigInteger BigNumerator => Numerator;

    internal BigInteger BigDenominator => Denominator;

    // Of small numbers. Most sums are of whole numbers or of parts of one kind, which need less.
    private static Rational Sum(long a, long b, long ofA, long ofB) =>
        ofA != ofB ? new((a * ofB) + (b * ofA), ofA * ofB)
        : ofA == 1 ? new(a + b, 0, true)
        : new(a + b, ofA);

    // Products of two such numbers, and the sum of two products, stay well within 64 bits.
    private static bool IsSmall(long value) => value is > -(1L << 30) and < 1L << 30;

    private static bool AreSmall(Rational a, Rational b) =>
        IsSmall(a.Numerator)
        && IsSmall(a.Denominator)
        && IsSmall(b.Numerator)
        && IsSmall(b.Denominator);

    /// <summary>Of two numbers that are not negative; of 0 and a number, the number.</summary>
    internal static long GreatestCommonDivisor(long a, long b)
    {
        while (b != 0)
        {
            (a, b) = (b, a % b);
        }
        return a;
    }

    /// <summary>
    /// The same in 128 bits, for the rare large numbers. Apart, because methods that touch Int128 are not compiled
    /// ahead of time, and every start of the program would pay for them.
    /// </summary>
    private static class Wide
    {
        public static Rational Add(Rational a, Rational b) =>
            Reduce(
                ((Int128)a.Numerator * b.Denominator) + ((Int128)b.Numerator * a.Denominator),
                (Int128)a.Denominator * b.Denominator
            );

        public static Rational Multiply(Rational a, Rational b) =>
            Reduce((Int128)a.Numerator * b.Numerator, (Int128)a.Denominator * b.Denominator);

        public static Rational Divide(Rational a, Rational b) =>
            Reduce((Int128)a.Numerator * b.Denominator, (Int128)a.Denominator * b.Numerator);

        public static int Compare(Rational a, Rational b) =>
            ((Int128)a.Numerator * b.Denominator).CompareTo((Int128)b.Numerator * a.Denominator);

        public static Rational Reduce(long numerator, long denominator) =>
            Reduce((Int128)numerator, denominator);

        private static Rational Reduce(Int128 numerator, Int128 denominator)
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
            Int128 a = Int128.Abs(numerator),
                b = denominator;
            while (b != 0)
            {
                (a, b) = (b, a % b);
            }
            return new Rational(
                checked((long)(numerator / a)),
                checked((long)(denominator / a)) - 1,
                true
            );
        }
    }
}
