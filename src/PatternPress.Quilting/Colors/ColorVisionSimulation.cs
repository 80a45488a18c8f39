using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Colors;

/// <summary>
/// How a colour looks with a colour-vision deficiency, by G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A
/// Physiologically-based Model for Simulation of Color Vision Deficiency", IEEE TVCG 15(6), 2009: a matrix on linear
/// RGB for each kind. The matrices are those of the authors' tables for the severities 0.5 and 1.
/// </summary>
public static class ColorVisionSimulation
{
    // csharpier-ignore
    private static readonly double[] Protan =
    [
        0.152286, 1.052583, -0.204868,
        0.114503, 0.786281, 0.099216,
        -0.003882, -0.048116, 1.051998,
    ];

    // csharpier-ignore
    private static readonly double[] ProtanHalf =
    [
        0.458064, 0.679578, -0.137642,
        0.092785, 0.846313, 0.060902,
        -0.007494, -0.016807, 1.024301,
    ];

    // csharpier-ignore
    private static readonly double[] Deutan =
    [
        0.367322, 0.860646, -0.227968,
        0.280085, 0.672501, 0.047413,
        -0.011820, 0.042940, 0.968881,
    ];

    // csharpier-ignore
    private static readonly double[] DeutanHalf =
    [
        0.547494, 0.607765, -0.155259,
        0.181692, 0.781742, 0.036566,
        -0.010410, 0.027275, 0.983136,
    ];

    // csharpier-ignore
    private static readonly double[] Tritan =
    [
        1.255528, -0.076749, -0.178779,
        -0.078411, 0.930809, 0.147602,
        0.004733, 0.691367, 0.303900,
    ];

    // csharpier-ignore
    private static readonly double[] TritanHalf =
    [
        1.017277, 0.027029, -0.044306,
        -0.006113, 0.958479, 0.047634,
        0.006379, 0.248708, 0.744913,
    ];

    /// <summary>The colour as seen when the cones are missing (severity 1).</summary>
    public static Color Seen(Color color, ColorVision by) => Apply(Full(by), color);

    /// <summary>The colour as seen when the cones are weak (severity 0.5).</summary>
    public static Color SeenWeakly(Color color, ColorVision by) => Apply(Half(by), color);

    internal static double[] Full(ColorVision kind) =>
        kind switch
        {
            ColorVision.Protan => Protan,
            ColorVision.Deutan => Deutan,
            _ => Tritan,
        };

    internal static double[] Half(ColorVision kind) =>
        kind switch
        {
            ColorVision.Protan => ProtanHalf,
            ColorVision.Deutan => DeutanHalf,
            _ => TritanHalf,
        };

    private static Color Apply(double[] m, Color color)
    {
        LinearRgb c = LinearRgb.From(color);
        return new LinearRgb(
            (m[0] * c.Red) + (m[1] * c.Green) + (m[2] * c.Blue),
            (m[3] * c.Red) + (m[4] * c.Green) + (m[5] * c.Blue),
            (m[6] * c.Red) + (m[7] * c.Green) + (m[8] * c.Blue)
        ).ToColor();
    }
}
