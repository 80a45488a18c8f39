namespace PatternPress.Typesetting.Drawings;

/// <summary>How the corners of a line look. The order is that of PDF's line join styles.</summary>
public enum StrokeJoin
{
    Miter,
    Round,
    Bevel,
}
