namespace PatternPress.Typesetting.Styles;

/// <summary>How lines stand between the left and right edge.</summary>
public enum Alignment
{
    Left,
    Centre,
    Right,

    /// <summary>Both edges even, except in the last line.</summary>
    Justified,
}
