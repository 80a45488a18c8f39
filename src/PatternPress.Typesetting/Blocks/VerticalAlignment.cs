namespace PatternPress.Typesetting.Blocks;

/// <summary>Where something lower than its place stands in it.</summary>
public enum VerticalAlignment
{
    Top,
    Middle,
    Bottom,

    /// <summary>First lines on a common baseline.</summary>
    Baseline,
}
