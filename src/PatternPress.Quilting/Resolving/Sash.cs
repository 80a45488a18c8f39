using PatternPress.Quilting.Geometry;

namespace PatternPress.Quilting.Resolving;

/// <summary>A sashing strip or cornerstone in its place.</summary>
public sealed record Sash(SashKind Kind, int Row, int Column, Rect Place, string Fabric);

public enum SashKind
{
    /// <summary>An upright strip beside a block, as long as the block is high.</summary>
    Upright,

    /// <summary>A level strip above or below one block (with cornerstones).</summary>
    Level,

    /// <summary>A level strip across the whole row (without cornerstones).</summary>
    Row,

    Cornerstone,
}
