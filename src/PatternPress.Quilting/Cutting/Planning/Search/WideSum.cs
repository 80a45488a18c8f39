namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>
/// A whole number of 128 bits, as sums of products of prices and counts need. Two plain words rather than Int128,
/// because methods that touch Int128 are not compiled ahead of time, and every start of the program would pay for them.
/// </summary>
public readonly struct WideSum(long high, ulong low) : IComparable<WideSum>
{
    private readonly long high = high;
    private readonly ulong low = low;

    public static WideSum Zero => default;

    /// <summary>−1, 0 or 1.</summary>
    public int Sign =>
        high < 0 ? -1
        : high == 0 && low == 0 ? 0
        : 1;

    public static WideSum Of(long value) => new(value >> 63, (ulong)value);

    /// <summary>The whole product, in 128 bits.</summary>
    public static WideSum Product(long a, long b)
    {
        var product = Product(Magnitude(a), Magnitude(b));
        return a < 0 != b < 0 ? -product : product;
    }

    public static WideSum operator +(WideSum a, WideSum b)
    {
        var low = unchecked(a.low + b.low);
        return new(unchecked(a.high + b.high + (low < a.low ? 1 : 0)), low);
    }

    public static WideSum operator -(WideSum a) =>
        new(unchecked(~a.high + (a.low == 0 ? 1 : 0)), unchecked(0 - a.low));

    public static WideSum operator -(WideSum a, WideSum b) => a + -b;

    public static bool operator <(WideSum a, WideSum b) => a.CompareTo(b) < 0;

    public static bool operator >(WideSum a, WideSum b) => a.CompareTo(b) > 0;

    public static WideSum Min(WideSum a, WideSum b) => a < b ? a : b;

    public static WideSum Max(WideSum a, WideSum b) => a > b ? a : b;

    public int CompareTo(WideSum other) =>
        high != other.high ? high.CompareTo(other.high) : low.CompareTo(other.low);

    /// <summary>The least whole number not below this number divided; the largest long if it is larger.</summary>
    /// <param name="divisor">From 1 to 2³¹ − 1.</param>
    /// <remarks>This number must not be negative.</remarks>
    public long DividedUp(int divisor)
    {
        var by = (ulong)divisor;
        ulong rest = 0;
        Span<ulong> parts = [(ulong)high >> 32, (uint)high, low >> 32, (uint)low];
        for (var i = 0; i < parts.Length; i++)
        {
            var part = (rest << 32) | parts[i];
            parts[i] = part / by;
            rest = part % by;
        }
        return Long(parts[0] | parts[1], (parts[2] << 32) | parts[3], rest > 0);
    }

    /// <summary>The least whole number not below this number divided by 2 to the power of <paramref name="bits"/>, which
    /// is below 64; the largest long if it is larger.</summary>
    /// <remarks>This number must not be negative.</remarks>
    public long ShiftedUp(int bits) =>
        bits == 0
            ? Long((ulong)high, low, more: false)
            : Long(
                (ulong)high >> bits,
                ((ulong)high << (64 - bits)) | (low >> bits),
                low << (64 - bits) != 0
            );

    /// <summary>The least whole number not below this number divided; the largest long if it is larger.</summary>
    /// <param name="divisor">Above zero.</param>
    /// <remarks>By halving, since 128 bits are not divided by 128 in one step; this number must not be negative.</remarks>
    public long Over(WideSum divisor)
    {
        if (Sign <= 0)
            return 0;
        if (divisor.high != 0)
            return high == 0 || !(divisor < this) ? 1 : long.MaxValue;
        long least = 0,
            most = long.MaxValue;
        while (most - least > 1)
        {
            var middle = least + ((most - least) / 2);
            if (Times(divisor.low, (ulong)middle) is var product && product < this)
                least = middle;
            else
                most = middle;
        }
        return most;
    }

    private static WideSum Times(ulong a, ulong b)
    {
        var product = Product(a, b);
        // Beyond what a sum holds: larger than any of them.
        return product.high < 0 ? new(long.MaxValue, ulong.MaxValue) : product;
    }

    private static long Long(ulong high, ulong low, bool more) =>
        high != 0 || low >= long.MaxValue ? long.MaxValue : (long)low + (more ? 1 : 0);

    private static ulong Magnitude(long value) =>
        value < 0 ? unchecked(0 - (ulong)value) : (ulong)value;

    private static WideSum Product(ulong a, ulong b)
    {
        ulong aHigh = a >> 32,
            aLow = (uint)a,
            bHigh = b >> 32,
            bLow = (uint)b;
        var lows = aLow * bLow;
        var middle = (aHigh * bLow) + (lows >> 32);
        var other = (aLow * bHigh) + (uint)middle;
        return new(
            (long)((aHigh * bHigh) + (middle >> 32) + (other >> 32)),
            (other << 32) | (uint)lows
        );
    }
}
