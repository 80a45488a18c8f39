namespace PatternPress.Typesetting.Drawings;

/// <summary>A hatch as it fills an area.</summary>
/// <param name="Hatch">The texture.</param>
/// <param name="Ink">The ink of its lines.</param>
/// <param name="Scale">Size of the texture on paper: 1 as designed; it does not change with the drawing's own scale.</param>
public sealed record HatchFill(Hatch Hatch, Ink Ink, double Scale = 1);
