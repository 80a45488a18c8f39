using PatternPress.Typesetting.Blocks;

namespace PatternPress.Typesetting.Layout;

/// <summary>A block's answer to the room it is offered.</summary>
public abstract record Fit
{
    Fit() { }

    /// <summary>All of it fits.</summary>
    public sealed record Fits(Fragment Fragment) : Fit;

    /// <summary>A first part fits; the rest is a block again, to be offered the next page.</summary>
    public sealed record Splits(Fragment Fragment, Block Rest) : Fit;

    /// <summary>Nothing fits here.</summary>
    /// <param name="Reason">Why, in words.</param>
    /// <param name="Needed">The least height that would do.</param>
    public sealed record Moves(string Reason, Points Needed) : Fit;
}
