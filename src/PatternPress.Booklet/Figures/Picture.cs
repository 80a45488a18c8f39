using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>A finished figure.</summary>
/// <param name="Drawing">Drawn in points for the width it is printed at: its natural size is its size on paper.</param>
/// <param name="AltText">What a sighted maker sees, in whole sentences.</param>
public sealed record Picture(Drawing Drawing, string AltText);
