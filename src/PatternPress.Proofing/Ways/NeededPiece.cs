using PatternPress.Quilting.Measures;

namespace PatternPress.Proofing.Ways;

/// <summary>A piece that a way of making a unit takes for one batch.</summary>
/// <param name="Name">As the steps call it.</param>
/// <param name="After">What is done to it before it is sewn.</param>
internal sealed record NeededPiece(
    string Name,
    int Role,
    long Count,
    PieceSide Width,
    PieceSide Height,
    PieceCut After = PieceCut.None,
    bool WholeStrip = false
)
{
    /// <summary>Whether this piece, cut larger, makes the unit larger, so that it must be trimmed.</summary>
    public bool DecidesTrim { get; init; }

    /// <summary>Whether trimming cannot make good what is cut too large: the points would be cut off.</summary>
    public bool Critical { get; init; }

    /// <summary>Whether it is cut larger on purpose and trimmed, whatever the house does with other pieces.</summary>
    public bool CutLarger { get; init; }

    /// <summary>
    /// Whether a piece of a width and a height will do, where its sides cannot be told one by one; null where they can.
    /// </summary>
    public Func<Length, Length, bool>? Fits { get; init; }

    /// <summary>
    /// How many pieces a strip of a height gives where they are sliced from it at an angle; null for other pieces. The count
    /// is of slices then.
    /// </summary>
    public Func<Length, long>? InStrip { get; init; }

    public static NeededPiece Square(string name, int role, long count, PieceSide side) =>
        new(name, role, count, side, side);
}

/// <summary>The side of a piece and what it shows once sewn: cut × share − loss × seam.</summary>
/// <param name="Wanted">What it must show.</param>
internal readonly record struct PieceSide(Rational Share, Exact Loss, Length Wanted)
{
    public PieceSide(Exact loss, Length wanted)
        : this(Rational.One, loss, wanted) { }

    /// <summary>How much more it shows than is wanted; negative if it is too small.</summary>
    public Length Over(Length cut, Length seam) => (cut * Share) - (seam * Loss) - Wanted;

    /// <summary>The side that would do exactly.</summary>
    public Length Exactly(Length seam) => (Wanted + (seam * Loss)) / Share;
}
