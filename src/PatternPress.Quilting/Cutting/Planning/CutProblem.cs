using System.Collections.Immutable;
using PatternPress.Quilting.Cutting.Planning.Search;

namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>What one fabric must yield: strips are cut across its usable width, then cut into pieces; a piece shorter
/// than its strip is trimmed (two-stage cutting). Wanted is the least total height of strips.</summary>
/// <param name="Width">Usable width of the fabric, grid units.</param>
public sealed record CutProblem(long Width, ImmutableArray<CutPiece> Pieces)
{
    /// <summary>What may be cut up besides, before any fabric is taken.</summary>
    public ImmutableArray<Remainder> Remainders { get; init; } = [];

    /// <summary>What is seen at once: no plan is shorter than what all pieces cover, laid out over the whole width, nor,
    /// without remainders, than the tallest piece. Grid units; for a problem without faults.</summary>
    public long EasyBound
    {
        get
        {
            WideSum area = WideSum.Zero;
            long tallest = 0;
            foreach (CutPiece piece in Pieces)
            {
                area += WideSum.Product(piece.Width * piece.Height, piece.Count);
                if (piece.Count > 0 && Remainders.IsEmpty)
                {
                    long upright = piece.Width <= Width ? piece.Height : long.MaxValue;
                    long turned =
                        piece.Turnable && piece.Height <= Width ? piece.Width : long.MaxValue;
                    long height = Math.Min(upright, turned);
                    tallest = Math.Max(tallest, height);
                }
            }
            foreach (Remainder remainder in Remainders)
            {
                area -= WideSum.Product(remainder.Width, remainder.Length);
            }
            return Math.Max(tallest, area.Sign > 0 ? area.DividedUp((int)Width) : 0);
        }
    }
}
