using NetTopologySuite.Geometries;
using NUnit.Framework;
using PatternPress.Quilting.Cutting.Planning;
using PatternPress.Quilting.Measures;
using Shouldly;

namespace PatternPress.Tests.Quilting.Cutting.Planning;

/// <summary>Slanted pieces are laid side by side as polygons of their own, made from the angle alone: none over another, none
/// outside its strip, and the strip no longer than they need.</summary>
public class SlantedPieceTests
{
    private static readonly Length Height = Length.FromInches(4, 1, 4);
    private const double High = 4.25;

    [Test]
    public void Triangles_of_60_degrees([Range(1, 9)] int count) =>
        Lies(
            SlantedPiece.Triangle60(Height),
            count,
            n => Triangle(n, High / Math.Tan(Math.PI / 3))
        );

    [Test]
    public void Triangles_of_45_degrees([Range(1, 9)] int count) =>
        Lies(SlantedPiece.Triangle45(Height), count, n => Triangle(n, High));

    [Test]
    public void Diamonds_of_60_degrees([Range(1, 9)] int count) =>
        Lies(SlantedPiece.Diamond60(Height), count, n => Diamond(n, Math.PI / 3));

    [Test]
    public void Diamonds_of_45_degrees([Range(1, 9)] int count) =>
        Lies(SlantedPiece.Diamond45(Height), count, n => Diamond(n, Math.PI / 4));

    [Test]
    public void As_many_go_into_a_strip_as_its_length_allows()
    {
        Length strip = Length.FromInches(39, 1, 2);
        foreach (
            SlantedPiece piece in new[]
            {
                SlantedPiece.Triangle60(Height),
                SlantedPiece.Triangle45(Height),
                SlantedPiece.Diamond60(Height),
                SlantedPiece.Diamond45(Height),
            }
        )
        {
            long each = piece.CountIn(strip);
            piece.LengthFor(each).ShouldBeLessThanOrEqualTo(strip);
            piece.LengthFor(each + 1).ShouldBeGreaterThan(strip);
            piece.StripsFor((3 * each) + 1, strip).ShouldBe(4);
            piece.Runs((3 * each) + 1, strip).ShouldBe((3, each, 1));
            piece.CountIn(piece.First).ShouldBe(1);
            piece.StripsFor(1, Length.FromInches(1)).ShouldBeNull();
        }
    }

    // Every second one stands on its tip.
    private static (double X, double Y)[] Triangle(int n, double half)
    {
        double x = n * half;
        return n % 2 == 0
            ? [(x, 0), (x + (2 * half), 0), (x + half, High)]
            : [(x, High), (x + (2 * half), High), (x + half, 0)];
    }

    private static (double X, double Y)[] Diamond(int n, double angle)
    {
        double side = High / Math.Sin(angle),
            lean = High / Math.Tan(angle),
            x = n * side;
        return [(x, 0), (x + side, 0), (x + side + lean, High), (x + lean, High)];
    }

    private static void Lies(
        SlantedPiece piece,
        int count,
        Func<int, (double X, double Y)[]> corners
    )
    {
        Polygon[] laid =
        [
            .. Enumerable
                .Range(0, count)
                .Select(n =>
                {
                    (double X, double Y)[] at = corners(n);
                    return new Polygon(
                        new LinearRing([.. at.Append(at[0]).Select(c => new Coordinate(c.X, c.Y))])
                    );
                }),
        ];
        double end = laid.Max(p => p.EnvelopeInternal.MaxX);
        laid.Min(p => p.EnvelopeInternal.MinX).ShouldBe(0, 1e-9);
        laid.Max(p => p.EnvelopeInternal.MaxY).ShouldBe(High, 1e-9);
        piece.LengthFor(count).Inches.ToDouble().ShouldBe(end, 1e-9);
        for (int a = 0; a < laid.Length; a++)
        {
            for (int b = a + 1; b < laid.Length; b++)
            {
                laid[a].Intersection(laid[b]).Area.ShouldBe(0, 1e-9);
            }
        }
    }
}
