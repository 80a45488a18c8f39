namespace PatternPress.Typesetting.Drawings;

/// <summary>How the ends of a line look. The order is that of PDF's line cap styles.</summary>
public enum StrokeCap
{
    Butt,
    Round,
    Square,
}
