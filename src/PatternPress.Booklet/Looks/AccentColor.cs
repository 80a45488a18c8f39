using PatternPress.Quilting.Colors;
using PatternPress.Quilting.Model;
using PatternPress.Typesetting;

namespace PatternPress.Booklet.Looks;

/// <summary>
/// The accent of a pattern's pages: its most colourful fabric that reads on white, darkened if it must be.
/// </summary>
public static class AccentColor
{
    /// <summary>Less colourful than this, an accent looks like a printing fault of grey.</summary>
    private const double LeastChroma = 12;

    /// <summary>The accent; null where no fabric has colour enough.</summary>
    /// <param name="tint">The ground of notes and heads of tables, on which it must be read too.</param>
    public static Ink? From(IEnumerable<Fabric> fabrics, Ink? tint = null)
    {
        Color? best = null;
        double bestScore = 0;
        foreach (Fabric fabric in fabrics)
        {
            double chroma = Chroma(fabric.Color);
            // A colour that has to be darkened a good deal no longer looks like the fabric.
            double reads = Math.Min(
                1,
                Contrast.Ratio(fabric.Color, Contrast.White) / Contrast.Text
            );
            double score = chroma * reads * reads;
            if (chroma >= LeastChroma && score > bestScore)
            {
                best = fabric.Color;
                bestScore = score;
            }
        }
        return best is { } color ? Darken(color, tint ?? Ink.White) : null;
    }

    /// <summary>
    /// The colour itself, or the lightest darker shade of it that reads on white, on a tint, and on its own pale mixture.
    /// </summary>
    internal static Ink Darken(Color color, Ink tint)
    {
        var ink = new Ink(color.Red, color.Green, color.Blue);
        for (int step = 0; step <= 50; step++)
        {
            Ink shade = ink.MixedWith(Ink.Black, step * 0.02);
            if (
                shade.ContrastWith(tint) >= Contrast.Text
                && shade.ContrastWith(shade.MixedWith(Ink.White, 0.9)) >= Contrast.Text
            )
            {
                return shade;
            }
        }
        return Ink.Black;
    }

    private static double Chroma(Color color)
    {
        Lab lab = Lab.From(color);
        return Math.Sqrt((lab.A * lab.A) + (lab.B * lab.B));
    }
}
