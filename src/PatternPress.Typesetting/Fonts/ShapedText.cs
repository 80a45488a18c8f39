using System.Collections.Immutable;

namespace PatternPress.Typesetting.Fonts;

/// <summary>Words as glyphs, in units of the font.</summary>
/// <param name="Characters">What the glyphs stand for.</param>
/// <param name="Glyphs">The glyphs from left to right.</param>
public sealed record ShapedText(string Characters, ImmutableArray<Glyph> Glyphs)
{
    public static readonly ShapedText Empty = new("", []);

    /// <summary>The sum of all advances.</summary>
    public int Advance { get; } = Glyphs.Sum(glyph => glyph.Advance);

    /// <summary>The advance of the glyphs that stand for the first so many characters.</summary>
    public int AdvanceOfFirst(int characters) =>
        Glyphs.Where(glyph => glyph.Cluster < characters).Sum(glyph => glyph.Advance);

    /// <summary>The characters that the glyph at an index stands for; empty when an earlier glyph stands for them.</summary>
    public string CharactersOf(int glyph)
    {
        var cluster = Glyphs[glyph].Cluster;
        if (glyph > 0 && Glyphs[glyph - 1].Cluster == cluster)
        {
            return "";
        }

        var end = Characters.Length;
        for (var i = glyph + 1; i < Glyphs.Length; i++)
        {
            if (Glyphs[i].Cluster != cluster)
            {
                end = Glyphs[i].Cluster;
                break;
            }
        }

        return end > cluster ? Characters[cluster..end] : "";
    }
}
