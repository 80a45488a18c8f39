using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>What panels of one size must yield: each is cut into strips, across it or up it, the strips into pieces; a piece
/// lower than its strip is trimmed (two-stage cutting). Wanted is the least number of panels.</summary>
/// <param name="Width">Across the fabric the panels were cut from, grid units.</param>
/// <param name="Height">Along it, grid units.</param>
/// <param name="Pieces">Their width across the fabric, their height along it.</param>
public sealed record PanelProblem(long Width, long Height, ImmutableArray<CutPiece> Pieces)
{
    /// <summary>How long a strip is that is cut with its length across the fabric, or along it.</summary>
    /// <param name="up">Whether the strips of the panel are cut along the fabric.</param>
    public long Room(bool up) => up ? Height : Width;

    /// <summary>How high its strips may be together.</summary>
    public long Extent(bool up) => up ? Width : Height;

    /// <summary>The ways in which a piece may lie in a strip: its length along the strip, its height across it.</summary>
    public IEnumerable<(long Width, long Height)> Lies(CutPiece piece, bool up)
    {
        (long Along, long Across)[] both =
        [
            (piece.Width, piece.Height),
            (piece.Height, piece.Width),
        ];
        for (var i = 0; i < both.Length; i++)
        {
            var turned = i == 1;
            // Turned means turned on the fabric; in strips along the fabric a piece that is not turned lies crosswise.
            var lying =
                piece.AlongStrip ? !turned && (piece.Turnable || !up)
                : piece.Turnable ? !(turned && piece.Width == piece.Height)
                : turned == up;
            if (lying && both[i].Along <= Room(up) && both[i].Across <= Extent(up))
                yield return both[i];
        }
    }
}
