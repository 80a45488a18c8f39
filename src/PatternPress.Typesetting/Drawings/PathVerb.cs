namespace PatternPress.Typesetting.Drawings;

/// <summary>A step of a path.</summary>
public enum PathVerb : byte
{
    /// <summary>Starts a new part at a point.</summary>
    Move,

    /// <summary>A straight line to a point.</summary>
    Line,

    /// <summary>A cubic Bézier curve: two control points and the end.</summary>
    Curve,

    /// <summary>Back to the start of the part; takes no point.</summary>
    Close,
}
