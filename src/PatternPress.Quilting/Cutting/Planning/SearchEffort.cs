namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>How much work a search may spend, in elementary steps and not in time, so that the same list gets the same
/// plan on every machine.</summary>
public readonly record struct SearchEffort(long Steps)
{
    /// <summary>A second or two at the very most; ordinary cutting lists need a few thousandths of it.</summary>
    public static SearchEffort Usual { get; } = new(1_000_000_000);

    /// <summary>Some ten seconds, for hard lists whose last few units matter.</summary>
    public static SearchEffort Thorough { get; } = new(8_000_000_000);
}
