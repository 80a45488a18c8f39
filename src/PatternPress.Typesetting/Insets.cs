namespace PatternPress.Typesetting;

/// <summary>Distances from the four edges of a box.</summary>
public readonly record struct Insets(Points Left, Points Top, Points Right, Points Bottom)
{
    public static readonly Insets None;

    /// <summary>The same distance on all edges.</summary>
    public static Insets All(Points each) => new(each, each, each, each);

    /// <summary>One distance left and right, another above and below.</summary>
    public static Insets Of(Points sides, Points ends) => new(sides, ends, sides, ends);

    public Points Across => Left + Right;

    public Points Down => Top + Bottom;
}
