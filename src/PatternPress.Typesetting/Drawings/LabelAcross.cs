namespace PatternPress.Typesetting.Drawings;

/// <summary>Which part of a label stands at its point, across.</summary>
public enum LabelAcross
{
    Left,
    Centre,
    Right,
}
