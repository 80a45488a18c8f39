using System.Runtime.CompilerServices;
using PatternPress.Typesetting.Fonts;

namespace PatternPress.Typesetting.Layout.Lines;

/// <summary>
/// How fractions are formed. A font's own are used where their numerals are large enough to be read with certainty; where
/// they are not, or where the font has none, ordinary numerals are made smaller.
/// </summary>
static class FractionForm
{
    public const char Slash = '\u2044';

    // Numerals of a fraction must be at least this share of the capitals' height: 3/8 read as 5/8 is a wrong cut.
    const double LeastShare = 0.58;
    const int NumeralPercent = 64;

    static readonly ConditionalWeakTable<FontFace, StrongBox<bool>> Legible = [];

    /// <summary>The size of numerals made for a fraction.</summary>
    public static Points NumeralSize(Points size) => size * NumeralPercent / 100;

    /// <summary>Whether the face's own fractions are used.</summary>
    public static bool HasLegible(TextMeasurer measurer, FontFace face) =>
        Legible.GetValue(face, one => new StrongBox<bool>(IsLegible(measurer, one))).Value;

    /// <summary>What separates a whole number from a fraction formed of several glyphs.</summary>
    public static ShapedText Gap(TextMeasurer measurer, FontFace face)
    {
        var space = measurer.Shape(face, " ");
        return new(
            " ",
            [.. space.Glyphs.Select(glyph => glyph with { Advance = glyph.Advance / 8 })]
        );
    }

    // The font forms a fraction around the slash by itself if it can: then the numerals are other glyphs than usual.
    static bool IsLegible(TextMeasurer measurer, FontFace face)
    {
        var fraction = measurer.Shape(face, $"3{Slash}8");
        if (fraction.Glyphs.Length != 3 || fraction.Glyphs.Any(glyph => glyph.Id == 0))
        {
            return false;
        }

        var (above, below) = (fraction.Glyphs[0].Id, fraction.Glyphs[2].Id);
        return above != measurer.Shape(face, "3").Glyphs[0].Id
            && below != measurer.Shape(face, "8").Glyphs[0].Id
            && Height(face, above) >= LeastShare * face.Font.CapHeight
            && Height(face, below) >= LeastShare * face.Font.CapHeight;
    }

    static int Height(FontFace face, int glyph) =>
        face.Font.BoundsOf(glyph) is { } box ? box.Top - box.Bottom : 0;
}
