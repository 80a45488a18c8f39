namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>A kind of piece to cut: one size, so many of it. All sizes are whole units of one grid (an eighth of an
/// inch, half a millimetre ...) that the caller chooses so that every cut size is a multiple of it.</summary>
/// <param name="Id">The caller's number for the kind; no two kinds of a problem share one.</param>
/// <param name="Width">Along the strip, that is across the fabric; grid units, as cut.</param>
/// <param name="Height">Across the strip, that is along the fabric (the direction yardage is measured in); grid units.</param>
/// <param name="Count">How many are needed.</param>
/// <param name="Turnable">Whether width and height may change places (no directional print, either grain allowed).</param>
public sealed record CutPiece(int Id, long Width, long Height, long Count, bool Turnable)
{
    /// <summary>Whether it is a strip itself: its width always lies along the strip it is cut from. Of use only in panels, whose
    /// strips may run either way.</summary>
    public bool AlongStrip { get; init; }
}
