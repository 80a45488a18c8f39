using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>One or more strips that are cut alike.</summary>
/// <param name="Height">Of each strip, grid units.</param>
/// <param name="Copies">How many are cut alike, at least one.</param>
/// <param name="Segments">From the left end on: tallest pieces first, so that the shorter ones come off the end.</param>
public sealed record Strip(long Height, long Copies, ImmutableArray<StripSegment> Segments)
{
    /// <summary>The index of the remainder it is cut from; null if it is cut from the fabric.</summary>
    public int? From { get; init; }

    /// <summary>Length of one strip that its pieces take, grid units; the rest is left over.</summary>
    public long Used => Segments.Sum(segment => segment.Length);

    /// <summary>Height of all copies together, grid units.</summary>
    public long Total => Height * Copies;
}
