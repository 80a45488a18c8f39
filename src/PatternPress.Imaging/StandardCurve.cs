namespace PatternPress.Imaging;

/// <summary>
/// The transfer curve of sRGB (IEC 61966-2-1) between 8-bit values and whole units of light, of which white has
/// <see cref="Full"/>: averages of light are then whole numbers and the same on every machine.
/// </summary>
static class StandardCurve
{
    public const int Full = 65535;

    // Built when first asked for.
    static readonly Lazy<(int[] Light, byte[] Value)> Tables = new(Build);

    public static int[] Light => Tables.Value.Light;

    /// <summary>The nearest 8-bit value.</summary>
    public static byte Encode(int light) => Tables.Value.Value[light];

    static (int[], byte[]) Build()
    {
        var light = new int[256];
        for (var v = 0; v < 256; v++)
        {
            var c = v / 255.0;
            light[v] = (int)
                Math.Round((c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4)) * Full);
        }

        var value = new byte[Full + 1];
        for (var i = 0; i <= Full; i++)
        {
            var l = (double)i / Full;
            var c = l <= 0.0031308 ? l * 12.92 : (1.055 * Math.Pow(l, 1 / 2.4)) - 0.055;
            value[i] = (byte)Math.Round(c * 255, MidpointRounding.AwayFromZero);
        }

        return (light, value);
    }
}
