namespace PatternPress.Quilting.Colors;

/// <summary>The three kinds of colour-vision deficiency.</summary>
public enum ColorVision
{
    /// <summary>The cones for long waves (red) are weak or missing.</summary>
    Protan,

    /// <summary>The cones for middle waves (green) are weak or missing; the most common kind.</summary>
    Deutan,

    /// <summary>The cones for short waves (blue) are weak or missing; rare.</summary>
    Tritan,
}
