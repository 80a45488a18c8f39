namespace PatternPress.Typesetting.Layout;

/// <summary>The place a block is offered.</summary>
/// <param name="Width">Its width.</param>
/// <param name="Height">Its height.</param>
/// <param name="AtTop">Whether nothing stands above it on the page: then moving on would win nothing.</param>
/// <param name="Forced">Whether the block must be placed even if it does not fit, and say so.</param>
/// <param name="Top">How far below the head of the page's text it begins; none where no page is being filled.</param>
public readonly record struct Room(
    Points Width,
    Points Height,
    bool AtTop,
    bool Forced = false,
    Points? Top = null
)
{
    /// <summary>Room of a width without limit downwards.</summary>
    public static Room Endless(Points width) => new(width, Points.Unlimited, AtTop: true);

    /// <summary>Whether there is no limit downwards: in a cell, a caption, a footer no page ends.</summary>
    public bool IsEndless => Height > Points.Unlimited / 2;
}
