namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>How much work a search may spend, in elementary steps and not in time, so that the same list gets the same
/// plan on every machine.</summary>
public readonly record struct SearchEffort(long Steps)
{
    /// <summary>A tenth of a second or so: enough for nearly every fabric of a quilt.</summary>
    public static SearchEffort Brief { get; } = new(25_000_000);

    /// <summary>About a second at the very most; ordinary cutting lists need a few thousandths of it.</summary>
    public static SearchEffort Usual { get; } = new(200_000_000);

    /// <summary>Some ten seconds, for hard lists whose last few units matter.</summary>
    public static SearchEffort Thorough { get; } = new(8_000_000_000);
}
