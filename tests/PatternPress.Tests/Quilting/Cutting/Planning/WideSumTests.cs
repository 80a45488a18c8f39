using System.Numerics;
using PatternPress.Quilting.Cutting.Planning.Search;

namespace PatternPress.Tests.Quilting.Cutting.Planning;

/// <summary>Sums of products in 128 bits, against numbers of any size.</summary>
public sealed class WideSumTests
{
    private static readonly long[] Numbers =
    [
        0,
        1,
        -1,
        3,
        -7,
        uint.MaxValue,
        1L + uint.MaxValue,
        -(1L << 40) - 5,
        (1L << 60) + 12345,
        -(1L << 60),
        long.MaxValue,
        long.MinValue + 1,
    ];

    [Test]
    public void Sums_of_products_compare_and_divide_as_whole_numbers_do()
    {
        foreach (long a in Numbers)
        foreach (long b in Numbers)
        foreach (long c in Numbers)
        {
            WideSum sum = WideSum.Product(a, b) + WideSum.Of(c);
            BigInteger exact = ((BigInteger)a * b) + c;
            sum.Sign.ShouldBe(exact.Sign, $"{a} × {b} + {c}");
            WideSum other = WideSum.Product(b, c) - WideSum.Of(a);
            (sum < other).ShouldBe(exact < ((BigInteger)b * c) - a, $"{a}, {b}, {c}");
            if (exact.Sign < 0)
            {
                continue;
            }
            foreach (int bits in new[] { 0, 1, 17, 44, 63 })
            {
                sum.ShiftedUp(bits)
                    .ShouldBe(Up(exact, BigInteger.One << bits), $"{exact}/2^{bits}");
            }
            foreach (int divisor in new[] { 1, 2, 336, int.MaxValue })
            {
                sum.DividedUp(divisor).ShouldBe(Up(exact, divisor), $"{exact}/{divisor}");
            }
        }

        static long Up(BigInteger value, BigInteger divisor) =>
            (long)BigInteger.Min(long.MaxValue, (value + divisor - 1) / divisor);
    }
}
