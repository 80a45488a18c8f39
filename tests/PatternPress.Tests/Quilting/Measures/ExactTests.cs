using CsCheck;
using PatternPress.Quilting.Measures;

namespace PatternPress.Tests.Quilting.Measures;

public sealed class ExactTests
{
    private static readonly Gen<Rational> _rational = Gen.Select(Gen.Int[-400, 400], Gen.Int[1, 64])
        .Select((n, d) => new Rational(n, d));

    private static readonly Gen<Exact> _exact = Gen.Select(
            _rational,
            _rational,
            _rational,
            _rational
        )
        .Select((a, b, c, d) => new Exact(a, b, c, d));

    [Test]
    public void Squares_of_the_roots_are_whole()
    {
        (Exact.SquareRootOfTwo * Exact.SquareRootOfTwo).ShouldBe(new Exact(2));
        (Exact.SquareRootOfThree * Exact.SquareRootOfThree).ShouldBe(new Exact(3));
        (Exact.SquareRootOfTwo * Exact.SquareRootOfThree).ShouldBe(new Exact(0, 0, 0, 1));
    }

    [Test]
    public void Sign_and_order_agree_with_floating_point_where_that_is_sure() =>
        Gen.Select(_exact, _exact)
            .Sample(
                (a, b) =>
                {
                    double difference = a.ToDouble() - b.ToDouble();
                    if (Math.Abs(difference) > 1e-9)
                    {
                        a.CompareTo(b).ShouldBe(Math.Sign(difference));
                    }
                    (a - a).Sign.ShouldBe(0);
                    (a * b - (b * a)).Sign.ShouldBe(0);
                },
                iter: 3000
            );

    [Test]
    public void Common_measure_is_the_largest_that_measures_both() =>
        Gen.Select(_rational, _rational)
            .Where((a, b) => a.Sign != 0 || b.Sign != 0)
            .Sample(
                (a, b) =>
                {
                    Rational common = a.CommonMeasure(b);
                    common.Sign.ShouldBe(1);
                    (Rational times, Rational others) = (a / common, b / common);
                    times.IsWhole.ShouldBeTrue();
                    others.IsWhole.ShouldBeTrue();
                    System
                        .Numerics.BigInteger.GreatestCommonDivisor(
                            times.Numerator,
                            others.Numerator
                        )
                        .ShouldBe(1);
                },
                iter: 1000
            );

    [Test]
    public void Common_measure_counts_the_roots()
    {
        Exact a = new(new Rational(3, 4), new Rational(9, 8)),
            b = new(new Rational(-15, 2));
        a.CommonMeasure(b).ShouldBe(new Rational(3, 8));
        b.CommonMeasure(Exact.Zero).ShouldBe(new Rational(15, 2));
    }

    // 1393/985 and 3363/2378 are neighbouring convergents of √2; 1/10 000 000 apart, on different sides.
    [Test]
    public void Near_misses_of_a_root_fall_on_the_right_side()
    {
        (Exact.SquareRootOfTwo - new Rational(1393, 985)).Sign.ShouldBe(1);
        (Exact.SquareRootOfTwo - new Rational(3363, 2378)).Sign.ShouldBe(-1);
        (Exact.SquareRootOfThree - new Rational(262087, 151316)).Sign.ShouldBe(-1);
    }

    [Test]
    public void Floor_and_ceiling_enclose() =>
        _exact.Sample(
            x =>
            {
                (x >= x.Floor()).ShouldBeTrue();
                (x < x.Floor() + 1).ShouldBeTrue();
                (x <= x.Ceiling()).ShouldBeTrue();
                (x > x.Ceiling() - 1).ShouldBeTrue();
            },
            iter: 2000
        );
}
