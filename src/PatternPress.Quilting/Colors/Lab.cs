using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Colors;

/// <summary>A colour in CIE 1976 L*a*b*, white point D65. L is lightness from 0 (black) to 100 (white).</summary>
public readonly record struct Lab(double L, double A, double B)
{
    // (6/29)³ and (29/6)²/3 of CIE 15; exact fractions, so that the two branches meet.
    private const double Cubed = 216.0 / 24389;
    private const double Slope = 841.0 / 108;

    public static Lab From(Color color)
    {
        LinearRgb c = LinearRgb.From(color);
        // The matrix of IEC 61966-2-1. The white point is its row sums, so that greys come out without any colour.
        double x = ((0.4124 * c.Red) + (0.3576 * c.Green) + (0.1805 * c.Blue)) / 0.9505;
        double y = (0.2126 * c.Red) + (0.7152 * c.Green) + (0.0722 * c.Blue);
        double z = ((0.0193 * c.Red) + (0.1192 * c.Green) + (0.9505 * c.Blue)) / 1.0890;
        double fx = Root(x),
            fy = Root(y),
            fz = Root(z);
        return new((116 * fy) - 16, 500 * (fx - fy), 200 * (fy - fz));
    }

    /// <summary>What is left of the colour in black and white: its lightness alone.</summary>
    public Lab InGrey => this with { A = 0, B = 0 };

    private static double Root(double t) => t > Cubed ? Math.Cbrt(t) : (Slope * t) + (4.0 / 29);
}
