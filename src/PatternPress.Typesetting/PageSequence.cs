using System.Collections.Immutable;
using PatternPress.Typesetting.Blocks;

namespace PatternPress.Typesetting;

/// <summary>A run of pages that share a frame. Each sequence starts on a new page, unless it may join the last one.</summary>
/// <param name="Frame">Size, margins, running header and footer.</param>
/// <param name="Body">What flows through the pages.</param>
public sealed record PageSequence(PageFrame Frame, Block Body)
{
    /// <summary>
    /// How close the spaces between blocks may be set, as shares of what the styles ask for, the first preferred: the first is
    /// taken with which the sequence fills the fewest pages.
    /// </summary>
    public ImmutableArray<double> Densities { get; init; } = [1];

    /// <summary>
    /// The height that must be left on the last page of the sequence before for this one to go on there; none if it always
    /// starts on a new page.
    /// </summary>
    public Points? Joins { get; init; }

    /// <summary>Pages filled to a smaller share of their height are reported, unless they end the document.</summary>
    public double LeastFilled { get; init; }
}
