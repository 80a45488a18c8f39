namespace PatternPress.Typesetting.Drawings;

/// <summary>What stands at the end of a line.</summary>
public enum Arrowhead
{
    None,

    /// <summary>A filled triangle.</summary>
    Filled,

    /// <summary>Two strokes.</summary>
    Open,

    /// <summary>A stroke across the line, as at the ends of a dimension line.</summary>
    Bar,

    /// <summary>A slanted stroke, as at the ends of a dimension line in building drawings.</summary>
    Tick,

    /// <summary>A filled dot.</summary>
    Dot,
}
