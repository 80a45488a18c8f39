using System.Collections.Immutable;

namespace PatternPress.Typesetting.Drawings;

/// <summary>
/// A picture of lines, areas and words in its own units (y down), with a natural size on paper. Shapes scale with the
/// picture; pens, letters and hatches keep their size on paper, so they stay legible.
/// </summary>
/// <param name="Width">Width in the drawing's units.</param>
/// <param name="Height">Height in the drawing's units.</param>
/// <param name="Marks">What is drawn, back to front.</param>
public sealed record Drawing(double Width, double Height, ImmutableArray<Mark> Marks)
{
    /// <summary>How large one unit is on paper at the natural size.</summary>
    public Points UnitSize { get; init; } = new(1_000);

    /// <summary>The width on paper at the natural size.</summary>
    public Points NaturalWidth => UnitSize.Scale(Width);

    /// <summary>The height on paper at the natural size.</summary>
    public Points NaturalHeight => UnitSize.Scale(Height);

    /// <summary>The height on paper for a width on paper.</summary>
    public Points HeightFor(Points width) => Width <= 0 ? Points.Zero : width.Scale(Height / Width);

    /// <summary>The largest width on paper at which the drawing fits into a box.</summary>
    public Points WidthWithin(Points width, Points height) =>
        Height <= 0 ? width : Points.Min(width, height.Scale(Width / Height));

    /// <summary>The same drawing with another natural width on paper.</summary>
    public Drawing Sized(Points width) => this with { UnitSize = Points.Of(width.Value / Width) };
}
