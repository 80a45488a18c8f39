namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>A run of like pieces side by side in a strip.</summary>
/// <param name="PieceId">The kind's <see cref="CutPiece.Id"/>.</param>
/// <param name="Count">Pieces in the run, in one strip.</param>
/// <param name="Turned">Whether the piece lies with its width and height exchanged.</param>
/// <param name="Width">Of one piece, along the strip, as it lies; grid units.</param>
/// <param name="Height">Of one piece, as it lies; less than the strip's height means it is trimmed.</param>
public sealed record StripSegment(int PieceId, long Count, bool Turned, long Width, long Height)
{
    /// <summary>Length of strip the run takes, grid units.</summary>
    public long Length => Count * Width;
}
