using System.Numerics;

namespace PatternPress.Quilting.Measures;

/// <summary>
/// An exact number a + b√2 + c√3 + d√6 with rational parts: closed under addition and multiplication, and all
/// that straight-edged quilts on 45° and 60° angles need. Comparison is exact.
/// </summary>
public readonly struct Exact : IEquatable<Exact>, IComparable<Exact>
{
    // Nearly all measures of a quilt are fractions, and points and rectangles are made of many: the roots stay apart, so
    // that a fraction takes little room.
    private readonly Roots? _roots;

    public Exact(
        Rational one,
        Rational root2 = default,
        Rational root3 = default,
        Rational root6 = default
    )
    {
        One = one;
        _roots =
            root2.Numerator == 0 && root3.Numerator == 0 && root6.Numerator == 0
                ? null
                : new Roots(root2, root3, root6);
    }

    private Exact(Rational one, Roots? roots)
    {
        One = one;
        _roots = roots;
    }

    private sealed class Roots(Rational two, Rational three, Rational six)
    {
        public Rational Two { get; } = two;

        public Rational Three { get; } = three;

        public Rational Six { get; } = six;
    }

    public Rational One { get; }

    public Rational Root2 => _roots?.Two ?? default;

    public Rational Root3 => _roots?.Three ?? default;

    public Rational Root6 => _roots?.Six ?? default;

    public static Exact Zero => default;

    /// <summary>√2, the diagonal of a unit square.</summary>
    public static Exact SquareRootOfTwo => new(0, 1);

    /// <summary>√3, twice the height of a unit equilateral triangle.</summary>
    public static Exact SquareRootOfThree => new(0, 0, 1);

    public bool IsRational => _roots is null;

    public static implicit operator Exact(Rational value) => new(value, null);

    public static implicit operator Exact(long value) => new(new Rational(value), null);

    public static Exact operator +(Exact a, Exact b) =>
        b._roots is null ? new(a.One + b.One, a._roots)
        : a._roots is null ? new(a.One + b.One, b._roots)
        : new(a.One + b.One, a.Root2 + b.Root2, a.Root3 + b.Root3, a.Root6 + b.Root6);

    public static Exact operator -(Exact a) =>
        a._roots is null ? new(-a.One, null) : new(-a.One, -a.Root2, -a.Root3, -a.Root6);

    public static Exact operator -(Exact a, Exact b) =>
        b._roots is null ? new(a.One - b.One, a._roots) : a + -b;

    public static Exact operator *(Exact a, Exact b)
    {
        if (a.IsRational && b.IsRational)
        {
            return new(a.One * b.One, null);
        }
        return new(
            (a.One * b.One)
                + (2 * a.Root2 * b.Root2)
                + (3 * a.Root3 * b.Root3)
                + (6 * a.Root6 * b.Root6),
            (a.One * b.Root2)
                + (a.Root2 * b.One)
                + (3 * a.Root3 * b.Root6)
                + (3 * a.Root6 * b.Root3),
            (a.One * b.Root3)
                + (a.Root3 * b.One)
                + (2 * a.Root2 * b.Root6)
                + (2 * a.Root6 * b.Root2),
            (a.One * b.Root6) + (a.Root6 * b.One) + (a.Root2 * b.Root3) + (a.Root3 * b.Root2)
        );
    }

    public static Exact operator *(Exact a, Rational b) =>
        a._roots is null
            ? new(a.One * b, null)
            : new(a.One * b, a.Root2 * b, a.Root3 * b, a.Root6 * b);

    public static Exact operator /(Exact a, Rational b) => a * (1 / b);

    /// <summary>The largest fraction of which all parts of both numbers are whole multiples; 0 if both are 0.</summary>
    public Rational CommonMeasure(Exact other) => Content().CommonMeasure(other.Content());

    private Rational Content() =>
        _roots is null
            ? One.Abs()
            : One.Abs()
                .CommonMeasure(Root2.Abs())
                .CommonMeasure(Root3.Abs())
                .CommonMeasure(Root6.Abs());

    public static bool operator ==(Exact a, Exact b) => a.Equals(b);

    public static bool operator !=(Exact a, Exact b) => !a.Equals(b);

    public static bool operator <(Exact a, Exact b) => a.CompareTo(b) < 0;

    public static bool operator >(Exact a, Exact b) => a.CompareTo(b) > 0;

    public static bool operator <=(Exact a, Exact b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Exact a, Exact b) => a.CompareTo(b) >= 0;

    /// <summary>−1, 0 or 1, exactly.</summary>
    public int Sign
    {
        get
        {
            if (IsRational)
            {
                return One.Sign;
            }
            // Far from zero the doubles settle it: each is off by no more than a few parts in 10^16 of its size.
            double value = ToDouble();
            if (Math.Abs(value) > Size * 1e-12)
            {
                return value > 0 ? 1 : -1;
            }
            return Root3.Numerator == 0 && Root6.Numerator == 0
                ? SignOf(BigParts(One, Root2))
                : SignOverRoot3(BigParts(One, Root2), BigParts(Root3, Root6));
        }
    }

    // No less than the sum of what its parts are away from zero.
    private double Size =>
        _roots is null
            ? Math.Abs(One.ToDouble())
            : Math.Abs(One.ToDouble())
                + (Math.Abs(Root2.ToDouble()) * 1.5)
                + (Math.Abs(Root3.ToDouble()) * 2)
                + (Math.Abs(Root6.ToDouble()) * 2.5);

    /// <summary>The greatest whole number not above this.</summary>
    public long Floor()
    {
        if (IsRational)
        {
            return One.Floor();
        }
        // The double is a guess within a few units; the exact comparisons settle it.
        long guess = (long)Math.Floor(ToDouble());
        while (this < guess)
        {
            guess--;
        }
        while (this >= guess + 1)
        {
            guess++;
        }
        return guess;
    }

    /// <summary>The least whole number not below this.</summary>
    public long Ceiling() => -(-this).Floor();

    public Exact Abs() => Sign < 0 ? -this : this;

    public int CompareTo(Exact other)
    {
        if (IsRational && other.IsRational)
        {
            return One.CompareTo(other.One);
        }
        // Far apart the doubles settle it, as for the sign.
        double apart = ToDouble() - other.ToDouble();
        return Math.Abs(apart) > (Size + other.Size) * 1e-12
            ? Math.Sign(apart)
            : (this - other).Sign;
    }

    public bool Equals(Exact other) =>
        One == other.One
        && (
            ReferenceEquals(_roots, other._roots)
            || (Root2 == other.Root2 && Root3 == other.Root3 && Root6 == other.Root6)
        );

    public override bool Equals(object? obj) => obj is Exact other && Equals(other);

    public override int GetHashCode() =>
        _roots is null ? One.GetHashCode() : HashCode.Combine(One, Root2, Root3, Root6);

    /// <summary>The nearest double, for drawing and messages only.</summary>
    public double ToDouble() =>
        _roots is null
            ? One.ToDouble()
            : One.ToDouble()
                + (Root2.ToDouble() * Math.Sqrt(2))
                + (Root3.ToDouble() * Math.Sqrt(3))
                + (Root6.ToDouble() * Math.Sqrt(6));

    public override string ToString()
    {
        if (IsRational)
        {
            return One.ToString();
        }
        var terms = new List<string>();
        foreach (
            (Rational part, string root) in new[]
            {
                (One, ""),
                (Root2, "√2"),
                (Root3, "√3"),
                (Root6, "√6"),
            }
        )
        {
            if (part.Sign == 0)
            {
                continue;
            }
            string sign =
                terms.Count == 0 ? (part.Sign < 0 ? "−" : "") : (part.Sign < 0 ? " − " : " + ");
            Rational size = part.Abs();
            terms.Add(sign + (size == 1 && root.Length > 0 ? root : size + root));
        }
        return string.Concat(terms);
    }

    // p + q√2 on a common positive denominator, which does not change the sign.
    private static (BigInteger P, BigInteger Q) BigParts(Rational p, Rational q) =>
        (p.BigNumerator * q.BigDenominator, q.BigNumerator * p.BigDenominator);

    private static int SignOf((BigInteger P, BigInteger Q) x)
    {
        int p = x.P.Sign,
            q = x.Q.Sign;
        if (p == q || q == 0)
        {
            return p;
        }
        if (p == 0)
        {
            return q;
        }
        // Opposite signs: the larger square wins. √2 is irrational, so the squares are never equal.
        return ((x.P * x.P) - (2 * x.Q * x.Q)).Sign > 0 ? p : q;
    }

    // Sign of u + v√3, where u and v are p + q√2 over denominators that are put on one footing first.
    private int SignOverRoot3((BigInteger P, BigInteger Q) u, (BigInteger P, BigInteger Q) v)
    {
        BigInteger uDenominator = One.BigDenominator * Root2.BigDenominator;
        BigInteger vDenominator = Root3.BigDenominator * Root6.BigDenominator;
        u = (u.P * vDenominator, u.Q * vDenominator);
        v = (v.P * uDenominator, v.Q * uDenominator);
        int signU = SignOf(u),
            signV = SignOf(v);
        if (signU == signV || signV == 0)
        {
            return signU;
        }
        if (signU == 0)
        {
            return signV;
        }
        (BigInteger P, BigInteger Q) squares = (
            (u.P * u.P) + (2 * u.Q * u.Q) - (3 * ((v.P * v.P) + (2 * v.Q * v.Q))),
            (2 * u.P * u.Q) - (6 * v.P * v.Q)
        );
        return SignOf(squares) > 0 ? signU : signV;
    }
}
