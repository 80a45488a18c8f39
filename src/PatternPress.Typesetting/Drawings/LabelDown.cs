namespace PatternPress.Typesetting.Drawings;

/// <summary>Which part of a label stands at its point, up and down.</summary>
public enum LabelDown
{
    /// <summary>The baseline of the letters.</summary>
    Baseline,

    /// <summary>The middle of the capitals.</summary>
    Middle,

    /// <summary>The top of the capitals.</summary>
    Top,

    /// <summary>The lowest part of the letters.</summary>
    Bottom,
}
