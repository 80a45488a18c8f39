using System.Collections.Immutable;

namespace PatternPress.Typesetting.Layout;

/// <summary>A laid out piece of a block: parts at places relative to its upper left corner.</summary>
/// <param name="Width">The width it takes.</param>
/// <param name="Height">The height it takes.</param>
/// <param name="Parts">What it shows, in reading order.</param>
public sealed record Fragment(Points Width, Points Height, ImmutableArray<FragmentPart> Parts)
{
    /// <summary>From the upper edge to the first baseline, where there is text.</summary>
    public Points? FirstBaseline { get; init; }

    /// <summary>From the upper edge to the last baseline, where there is text.</summary>
    public Points? LastBaseline { get; init; }

    /// <summary>From the left edge to the end of the last line, where the fragment is a paragraph.</summary>
    public Points? LastLineEnd { get; init; }

    /// <summary>Nothing.</summary>
    public static readonly Fragment Empty = new(Points.Zero, Points.Zero, []);
}
