using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Finishing;

/// <summary>
/// Continuous bias: a square is cut on the diagonal, its halves sewn to a parallelogram, that sewn to a tube with its edges
/// offset by one line, and the tube cut along lines on the bias. A round of the tube is as long as the square's diagonal less two
/// seams, which cross it at 45°; there are as many rounds as whole strips lie between the square's corner and its diagonal, twice.
/// (The trade reckons with the area alone, side = √(length × width) rounded up: that leaves out the seams and the strip that
/// is too narrow. Geometry, no source.)
/// </summary>
public static class BiasSquare
{
    /// <summary>The length of bias strip that a square gives, exactly.</summary>
    public static Length Yield(Length side, Length width, Length seam)
    {
        // Between the long edges of the parallelogram lies half the diagonal, side / √2.
        long rounds = (side * _halfRoot).CountOf(width);
        Length round = (side - (seam * 4)) * Exact.SquareRootOfTwo;
        return round.Sign > 0 ? round * rounds : Length.Zero;
    }

    private static readonly Exact _halfRoot = new(0, new Rational(1, 2));

    /// <summary>The fewest squares, and of these the smallest by whole steps, whose strips joined are long enough; null if none
    /// that the fabric holds is.</summary>
    /// <param name="needed">Length of binding.</param>
    /// <param name="width">Cut width of a strip.</param>
    /// <param name="most">The largest square that can be cut.</param>
    /// <param name="step">A whole inch or centimetre.</param>
    /// <param name="loss">Length that a join of two strips takes.</param>
    public static (long Squares, Length Side)? For(
        Length needed,
        Length width,
        Length seam,
        Length most,
        Length step,
        Length loss
    )
    {
        long largest = most.CountOf(step);
        for (long squares = 1; squares <= MostSquares; squares++)
        {
            // A larger square never gives less.
            long low = 1,
                high = largest + 1;
            while (low < high)
            {
                long middle = (low + high) / 2;
                Length joined =
                    (Yield(step * middle, width, seam) * squares) - (loss * (squares - 1));
                (low, high) = joined >= needed ? (low, middle) : (middle + 1, high);
            }
            if (low <= largest)
            {
                return (squares, step * low);
            }
        }
        return null;
    }

    // Bias binding of more squares is longer than any quilt is round.
    private const long MostSquares = 40;
}
