using PatternPress.Typesetting;

namespace PatternPress.Booklet.Figures;

/// <summary>The room a figure has on the page. A figure fills the width or the height, whichever it meets first.</summary>
/// <param name="Width">The most it may be wide on paper.</param>
/// <param name="Height">The most it may be high on paper.</param>
public readonly record struct FigureRoom(Points Width, Points Height)
{
    /// <summary>A room given in points.</summary>
    public static FigureRoom Of(double width, double height) =>
        new(Points.Of(width), Points.Of(height));
}
