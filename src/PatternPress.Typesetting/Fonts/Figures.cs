namespace PatternPress.Typesetting.Fonts;

/// <summary>Which shapes of the figures 0 to 9 are used.</summary>
public enum Figures
{
    /// <summary>As tall as capitals, each as wide as it wants.</summary>
    Lining,

    /// <summary>As tall as capitals and equally wide, so that columns line up.</summary>
    Tabular,
}
