using PatternPress.Quilting.Cutting.Planning.Search;

namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>
/// A lower bound on the total height of strips, without solving anything. For each height, pieces that lie in strips at least so
/// tall however they are turned take a number of strips that is bounded as in bin packing; what each height adds to the one
/// below counts for that many strips.
/// </summary>
/// <remarks>
/// The bound on the number of strips weighs each width with the dual feasible functions u(k) of S. P. Fekete and J. Schepers,
/// "New classes of fast lower bounds for bin packing problems", Mathematical Programming 91 (2001), from memory: with x the
/// share of the width, x where (k + 1) x is whole, else ⌊(k + 1) x⌋ / k. Pieces whose weights sum to more than 1 never share a
/// strip. For equal pieces of which m fit side by side, u(m) gives the number of pieces divided by m.
/// </remarks>
public static class LevelBound
{
    /// <summary>Where more pieces than this lie side by side, their number says little more than what they cover.</summary>
    private const int Finest = 40;

    /// <param name="problem">Without faults.</param>
    /// <returns>In grid units; 0 where strips of remainders may take pieces.</returns>
    public static long Of(CutProblem problem)
    {
        if (problem.Remainders.Length > 0)
        {
            return 0;
        }
        // However a piece lies, it is at least so high and at least so wide.
        var pieces = new List<(long Height, long Width, long Count)>(problem.Pieces.Length);
        foreach (CutPiece piece in problem.Pieces)
        {
            long longer = Math.Max(piece.Width, piece.Height),
                shorter = Math.Min(piece.Width, piece.Height);
            if (piece.Count > 0)
            {
                pieces.Add(
                    !piece.Turnable ? (piece.Height, piece.Width, piece.Count)
                    : longer > problem.Width ? (longer, shorter, piece.Count)
                    : (shorter, shorter, piece.Count)
                );
            }
        }
        pieces.Sort((a, b) => b.Height.CompareTo(a.Height));
        // Within CutLimits no sum here comes near 64 bits: shares are at most the number of parts, and no piece is wider than
        // the whole.
        long total = 0;
        for (int i = 0; i < pieces.Count; i++)
        {
            long below = i + 1 < pieces.Count ? pieces[i + 1].Height : 0;
            if (pieces[i].Height > below)
            {
                total += (pieces[i].Height - below) * Strips(pieces, i + 1, problem.Width);
            }
        }
        return total;
    }

    /// <summary>The least number of strips for the tallest pieces.</summary>
    private static long Strips(
        List<(long Height, long Width, long Count)> pieces,
        int tallest,
        long whole
    )
    {
        long most = 0;
        for (int k = 1; k <= Finest; k++)
        {
            long sum = 0;
            for (int i = 0; i < tallest; i++)
            {
                long share = (k + 1) * pieces[i].Width,
                    parts = share / whole;
                sum += parts * (share % whole == 0 ? k : k + 1) * pieces[i].Count;
            }
            long strips = (sum + (k * (k + 1)) - 1) / (k * (k + 1));
            most = Math.Max(most, strips);
        }
        return most;
    }
}
