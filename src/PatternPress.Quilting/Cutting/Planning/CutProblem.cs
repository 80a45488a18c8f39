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

    /// <summary>Whether a piece is longer than the fabric is wide: it can only lie along the fabric, and others may be cut
    /// from what is left beside it.</summary>
    public bool IsLong(CutPiece piece) =>
        (piece.Turnable ? Math.Max(piece.Width, piece.Height) : piece.Height) > Width;

    /// <summary>What is seen at once: no plan, beside long pieces or not, is shorter than what all pieces cover, laid out over
    /// the whole width, nor than <see cref="LevelBound"/>. Grid units; for a problem without faults.</summary>
    public long EasyBound
    {
        get
        {
            WideSum area = WideSum.Zero;
            foreach (CutPiece piece in Pieces)
            {
                area += WideSum.Product(piece.Width * piece.Height, piece.Count);
            }
            foreach (Remainder remainder in Remainders)
            {
                area -= WideSum.Product(remainder.Width, remainder.Length);
            }
            ImmutableArray<CutPiece> longs = [.. Pieces.Where(p => p.Count > 0 && IsLong(p))];
            return Math.Max(
                LevelBound.Of(longs.IsEmpty ? this : this with { Pieces = longs }),
                area.Sign > 0 ? area.DividedUp((int)Width) : 0
            );
        }
    }
}
