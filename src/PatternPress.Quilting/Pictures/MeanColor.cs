using PatternPress.Quilting.Colors;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Pictures;

/// <summary>The color that a picture has from afar: the mean of its light, not of its code values.</summary>
public static class MeanColor
{
    public static Color Of(FabricPicture picture)
    {
        Span<long> counts = stackalloc long[3 * 256];
        for (int i = 0; i < picture.Pixels.Length; i++)
        {
            counts[(i % 3 * 256) + picture.Pixels[i]]++;
        }
        Span<double> light = stackalloc double[3];
        for (int value = 0; value < 256; value++)
        {
            double each = LinearRgb.From(new Color((byte)value, 0, 0)).Red;
            for (int channel = 0; channel < 3; channel++)
            {
                light[channel] += each * counts[(channel * 256) + value];
            }
        }
        double pixels = Math.Max(1, picture.Pixels.Length / 3);
        return new LinearRgb(light[0] / pixels, light[1] / pixels, light[2] / pixels).ToColor();
    }
}
