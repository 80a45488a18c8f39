using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Techniques;

/// <summary>
/// How much larger than finished a piece is cut, for a seam s on every edge. A triangle needs more than a square
/// because its seams run past its points: its incircle grows by s, and with it the edges.
/// </summary>
internal static class Allowance
{
    private static readonly Exact OfHalfSquare = new(2, 1);

    private static readonly Exact OfQuarterSquare = new(2, 2);

    private static readonly Exact HalfOfRootTwo = new(0, new Rational(1, 2));

    /// <summary>2s: squares, rectangles, strips.</summary>
    public static Length Square(Length seam) => seam * 2;

    /// <summary>
    /// s(2 + √2) on the short edges of a right triangle with equal legs: 0.8536 in for a seam of 1/4 in, the 7/8 in
    /// of the trade.
    /// </summary>
    public static Length HalfSquare(Length seam) => seam * OfHalfSquare;

    /// <summary>s(2 + 2√2) on its long edge: 1.2071 in for a seam of 1/4 in, the 1 1/4 in of the trade.</summary>
    public static Length QuarterSquare(Length seam) => seam * OfQuarterSquare;

    /// <summary>The diagonal of a square, s√2 for a seam: what a leg loses when the long edge is sewn at a seam.</summary>
    public static Length Diagonal(Length side) => side * Exact.SquareRootOfTwo;

    /// <summary>The side of a square whose diagonal is given.</summary>
    public static Length SideOfDiagonal(Length diagonal) => diagonal * HalfOfRootTwo;
}
