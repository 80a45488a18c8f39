using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Colors;

/// <summary>
/// How different two colours look, by CIEDE2000: G. Sharma, W. Wu, E. N. Dalal, "The CIEDE2000 Color-Difference
/// Formula", Color Research and Application 30(1), 2005. About 1 is just noticeable side by side on screen.
/// </summary>
public static class ColorDifference
{
    private const double TwentyFiveToTheSeventh = 6103515625;

    public static double Between(Color first, Color second) =>
        Between(Lab.From(first), Lab.From(second));

    /// <summary>The difference in a black and white print: of lightness alone.</summary>
    public static double InGrey(Color first, Color second) =>
        Between(Lab.From(first).InGrey, Lab.From(second).InGrey);

    public static double Between(Lab first, Lab second)
    {
        double meanChroma = (Chroma(first.A, first.B) + Chroma(second.A, second.B)) / 2;
        double stretch = 1 + (0.5 * (1 - Saturation(meanChroma)));
        double a1 = first.A * stretch,
            a2 = second.A * stretch;
        double c1 = Chroma(a1, first.B),
            c2 = Chroma(a2, second.B);
        double h1 = Hue(a1, first.B),
            h2 = Hue(a2, second.B);

        double deltaL = second.L - first.L;
        double deltaC = c2 - c1;
        double deltaHue = 0;
        double meanHue = h1 + h2;
        if (c1 * c2 != 0)
        {
            double turn = h2 - h1;
            deltaHue =
                turn > 180 ? turn - 360
                : turn < -180 ? turn + 360
                : turn;
            meanHue =
                Math.Abs(turn) <= 180 ? (h1 + h2) / 2
                : h1 + h2 < 360 ? (h1 + h2 + 360) / 2
                : (h1 + h2 - 360) / 2;
        }
        double deltaH = 2 * Math.Sqrt(c1 * c2) * Sin(deltaHue / 2);

        double meanL = (first.L + second.L) / 2;
        double meanC = (c1 + c2) / 2;
        double t =
            1
            - (0.17 * Cos(meanHue - 30))
            + (0.24 * Cos(2 * meanHue))
            + (0.32 * Cos((3 * meanHue) + 6))
            - (0.20 * Cos((4 * meanHue) - 63));
        double fromMiddle = (meanL - 50) * (meanL - 50);
        double weightL = 1 + (0.015 * fromMiddle / Math.Sqrt(20 + fromMiddle));
        double weightC = 1 + (0.045 * meanC);
        double weightH = 1 + (0.015 * meanC * t);
        double around = (meanHue - 275) / 25;
        double rotation = -2 * Saturation(meanC) * Sin(60 * Math.Exp(-around * around));

        double l = deltaL / weightL,
            c = deltaC / weightC,
            h = deltaH / weightH;
        return Math.Sqrt((l * l) + (c * c) + (h * h) + (rotation * c * h));
    }

    private static double Chroma(double a, double b) => Math.Sqrt((a * a) + (b * b));

    private static double Saturation(double chroma)
    {
        double seventh = Math.Pow(chroma, 7);
        return Math.Sqrt(seventh / (seventh + TwentyFiveToTheSeventh));
    }

    private static double Hue(double a, double b)
    {
        if (a == 0 && b == 0)
        {
            return 0;
        }
        double degrees = Math.Atan2(b, a) * 180 / Math.PI;
        return degrees < 0 ? degrees + 360 : degrees;
    }

    private static double Sin(double degrees) => Math.Sin(degrees * Math.PI / 180);

    private static double Cos(double degrees) => Math.Cos(degrees * Math.PI / 180);
}
