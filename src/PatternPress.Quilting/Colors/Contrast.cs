using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Colors;

/// <summary>Relative luminance and contrast as the W3C's Web Content Accessibility Guidelines define them.</summary>
public static class Contrast
{
    /// <summary>Least contrast for text of body size (WCAG success criterion 1.4.3, level AA).</summary>
    public const double Text = 4.5;

    /// <summary>Least contrast for large text and for the lines of figures (1.4.3 and 1.4.11, level AA).</summary>
    public const double LargeText = 3;

    public static Color Black => new(0, 0, 0);

    public static Color White => new(255, 255, 255);

    /// <summary>Light given off, from 0 (black) to 1 (white).</summary>
    public static double Luminance(Color color)
    {
        LinearRgb c = LinearRgb.From(color);
        return (0.2126 * c.Red) + (0.7152 * c.Green) + (0.0722 * c.Blue);
    }

    /// <summary>From 1 (equal) to 21 (black on white). The order of the two does not matter.</summary>
    public static double Ratio(Color first, Color second)
    {
        double a = Luminance(first),
            b = Luminance(second);
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    /// <summary>Black or white, whichever reads better on <paramref name="color"/>: always at least 4.58 to 1.</summary>
    public static Color TextOn(Color color) =>
        Ratio(color, Black) >= Ratio(color, White) ? Black : White;
}
