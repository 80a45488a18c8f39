using PatternPress.Quilting.Measures;

namespace PatternPress.Proofing.Ways;

/// <summary>
/// What the seams of width a take from the side of a piece until it is sewn on all sides, counted in a. Derived here
/// from the geometry of the pieces alone.
/// </summary>
internal static class SeamLoss
{
    /// <summary>A straight piece loses one seam at each end: 2a.</summary>
    public static Exact Straight => new(2);

    /// <summary>
    /// A right triangle with equal legs, by its leg: the seam on the long edge moves that edge inwards by a, which
    /// takes a√2 off each leg; the seams on the legs take a at the corner and, where a leg meets the long edge, a more.
    /// Together a(2 + √2).
    /// </summary>
    public static Exact Leg => new(2, 1);

    /// <summary>
    /// The same triangle by its long edge, which is √2 times its leg: a(2 + √2)√2 = a(2 + 2√2).
    /// </summary>
    public static Exact LongEdge => new(2, 2);

    /// <summary>
    /// What is cut off a corner that is stitched and flipped is a triangle with legs of the square's side less a√2 (a
    /// beyond the sewn diagonal); two of them sewn together lose a√2 again.
    /// </summary>
    public static Exact Offcut => new(0, 2);

    /// <summary>The side of a square as a share of its diagonal.</summary>
    public static Exact SideOfDiagonal => new(0, new Rational(1, 2));
}
