using System.Collections.Immutable;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Layout;

/// <summary>A page whose body is laid out, but not its header and footer.</summary>
/// <param name="Number">Counted from 1.</param>
/// <param name="FirstOfSequence">Whether the frame's first-page variant applies.</param>
sealed record BodyPage(
    int Number,
    PageFrame Frame,
    bool FirstOfSequence,
    Fragment Body,
    ImmutableArray<PlacedAnchor> Anchors
)
{
    /// <summary>Filled to a smaller share of its height it is reported.</summary>
    public double LeastFilled { get; init; }
}
