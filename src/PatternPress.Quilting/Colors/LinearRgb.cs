using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Colors;

/// <summary>
/// A colour in light, not in code values: the sRGB transfer curve of IEC 61966-2-1 undone. 0 to 1 a channel inside the
/// gamut; a computed colour may lie outside.
/// </summary>
public readonly record struct LinearRgb(double Red, double Green, double Blue)
{
    public static LinearRgb From(Color color) =>
        new(Decode(color.Red), Decode(color.Green), Decode(color.Blue));

    /// <summary>The nearest colour that 8 bits a channel can hold; what lies outside the gamut is clipped.</summary>
    public Color ToColor() => new(Encode(Red), Encode(Green), Encode(Blue));

    private static double Decode(byte value)
    {
        double c = value / 255.0;
        // 0.04045 is the standard's threshold; WCAG's 0.03928 gives the same for every 8-bit value.
        return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
    }

    private static byte Encode(double light)
    {
        double v = Math.Clamp(light, 0, 1);
        double c = v <= 0.0031308 ? v * 12.92 : (1.055 * Math.Pow(v, 1 / 2.4)) - 0.055;
        return (byte)Math.Round(c * 255, MidpointRounding.AwayFromZero);
    }
}
