using System.Collections.Immutable;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// A light generated texture that stands for a print: our own, tone on tone, at about the scale of the print. It is
/// made of lines and dotted lines only, which cost few bytes however large the quilt.
/// </summary>
/// <param name="Word">The word the source uses: dot, stripe, check, ring, blender.</param>
/// <param name="Layers">Drawn in order over the flat colour.</param>
public sealed record PrintTexture(string Word, ImmutableArray<PrintLayer> Layers)
{
    /// <summary>Distance between repeats at scale 1, in points.</summary>
    private const double Repeat = 4;

    /// <summary>True distance between repeats of a print, in inches: an average quilting print.</summary>
    private const double RepeatInches = 0.75;

    /// <summary>Below this repeat on paper, in points, a texture is grey mush and is left out.</summary>
    private const double LeastRepeat = 2.4;

    /// <summary>The texture of a print word; any word that is not known gives a small scattered print.</summary>
    /// <param name="directional">
    /// Whether the print is cut with care for its direction. Stripes that are not would be drawn upright in pieces that
    /// the maker cuts either way; they are drawn scattered instead.
    /// </param>
    /// <returns>Null for a solid.</returns>
    public static PrintTexture? Of(string? word, bool directional = true) =>
        word switch
        {
            null or "" or "solid" => null,
            "dot" or "dots" => Dots,
            "stripe" or "stripes" => directional ? Stripes : Scatter with { Word = word },
            "check" or "checks" or "plaid" => Checks,
            "ring" or "rings" => Rings,
            "blender" or "marble" => Blender,
            _ => Scatter with { Word = word },
        };

    /// <summary>The fills that draw the print on a fabric, back to front; none where the scale is too small.</summary>
    /// <param name="pointsPerInch">How large an inch of the quilt is on paper.</param>
    /// <param name="degrees">How far the print is turned, clockwise.</param>
    public IEnumerable<HatchFill> On(Ink color, double pointsPerInch, int degrees = 0)
    {
        double repeat = Math.Clamp(RepeatInches * pointsPerInch, 0, 9);
        if (repeat < LeastRepeat)
        {
            yield break;
        }
        double scale = Math.Round(repeat / Repeat, 2);
        foreach (PrintLayer layer in Layers)
        {
            Hatch hatch = layer.Hatch with
            {
                Layers =
                [
                    .. layer
                        .Hatch.Layers.OfType<HatchLayer.Lines>()
                        .Select(l =>
                            Scaled(l, scale) with
                            {
                                Degrees = (l.Degrees + degrees) % 360,
                            }
                        ),
                ],
            };
            yield return new HatchFill(hatch, layer.InkOn(color));
        }
    }

    // The texture shrinks with the quilt, its lines only down to what prints.
    private static HatchLayer.Lines Scaled(HatchLayer.Lines lines, double scale) =>
        lines with
        {
            Spacing = Math.Round(lines.Spacing * scale, 3),
            Width = Math.Round(Math.Max(lines.Width * scale, FigureStyle.ThinnestLine), 3),
            Offset = Math.Round(lines.Offset * scale, 3),
            Stagger = Math.Round(lines.Stagger * scale, 3),
            Dashes = [.. lines.Dashes.Select(dash => Math.Round(dash * scale, 3))],
        };

    private static readonly PrintTexture Dots = new(
        "dot",
        [
            Layer(
                PrintTone.Contrast,
                new HatchLayer.Lines(0, Repeat / 2, 1.1)
                {
                    Dashes = [0, Repeat],
                    Stagger = Repeat / 2,
                }
            ),
        ]
    );

    private static readonly PrintTexture Stripes = new(
        "stripe",
        [
            Layer(PrintTone.Contrast, new HatchLayer.Lines(90, Repeat, 1)),
            Layer(PrintTone.Soft, new HatchLayer.Lines(90, Repeat, 0.5) { Offset = Repeat / 2 }),
        ]
    );

    private static readonly PrintTexture Checks = new(
        "check",
        [
            Layer(
                PrintTone.Soft,
                new HatchLayer.Lines(0, Repeat, 1.3),
                new HatchLayer.Lines(90, Repeat, 1.3)
            ),
            // Where the bands cross they look twice as deep.
            Layer(
                PrintTone.Contrast,
                new HatchLayer.Lines(0, Repeat, 1.3) { Dashes = [1.3, Repeat - 1.3] }
            ),
        ]
    );

    private static readonly PrintTexture Rings = new(
        "ring",
        [
            Layer(
                PrintTone.Contrast,
                new HatchLayer.Lines(0, Repeat * 0.6, 2.1)
                {
                    Dashes = [0, Repeat],
                    Stagger = Repeat / 2,
                }
            ),
            Layer(
                PrintTone.Fabric,
                new HatchLayer.Lines(0, Repeat * 0.6, 1.15)
                {
                    Dashes = [0, Repeat],
                    Stagger = Repeat / 2,
                }
            ),
        ]
    );

    private static readonly PrintTexture Blender = new(
        "blender",
        [
            Layer(
                PrintTone.Soft,
                new HatchLayer.Lines(24, 2.6, 1.3) { Dashes = [3.1, 4.3, 1.2, 3.6], Stagger = 3.7 },
                new HatchLayer.Lines(-58, 3.7, 1) { Dashes = [2.2, 6.1], Stagger = 2.9 }
            ),
        ]
    );

    private static readonly PrintTexture Scatter = new(
        "print",
        [
            Layer(
                PrintTone.Contrast,
                new HatchLayer.Lines(35, Repeat, 0.9) { Dashes = [1.2, Repeat + 1], Stagger = 2.4 },
                new HatchLayer.Lines(-50, Repeat + 1, 0.9) { Dashes = [0, Repeat], Stagger = 1.7 }
            ),
        ]
    );

    private static PrintLayer Layer(PrintTone tone, params ReadOnlySpan<HatchLayer> layers) =>
        new(tone, new Hatch("print", [.. layers]));
}

/// <summary>One tone of a print.</summary>
public sealed record PrintLayer(PrintTone Tone, Hatch Hatch)
{
    /// <summary>The layer's ink on a fabric: lighter on dark fabrics, darker on light ones.</summary>
    public Ink InkOn(Ink color)
    {
        Ink away = color.Luminance < 0.3 ? Ink.White : Ink.Black;
        return Tone switch
        {
            PrintTone.Contrast => color.MixedWith(away, away == Ink.White ? 0.34 : 0.22),
            PrintTone.Soft => color.MixedWith(away, away == Ink.White ? 0.16 : 0.1),
            _ => color,
        };
    }
}

/// <summary>How far a print's layer stands off the fabric's colour.</summary>
public enum PrintTone
{
    /// <summary>The fabric's own colour, to cut shapes out of the layer below.</summary>
    Fabric,

    Soft,
    Contrast,
}
