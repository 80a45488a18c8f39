using System.Collections.Immutable;
using PatternPress.Pdf.Fonts;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;
using PatternPress.Typesetting.Fonts;

namespace PatternPress.Pdf.Content;

/// <summary>A word across a page from corner to corner, outlined so that what lies below stays legible.</summary>
static class DraftMark
{
    // The share of the diagonal that the word may take.
    const double Reach = 0.6;

    public static readonly Stroke Pen = new(new Points(1_200), Ink.Grey(0.6));

    public static VectorPath Across(PaperSize paper, string word, FontTable fonts)
    {
        var face = fonts.Count > 0 ? fonts[0].Face : null;
        if (face is null)
        {
            return VectorPath.Polyline(new(0, paper.Height.Value), new(paper.Width.Value, 0));
        }

        var font = face.Font;
        var glyphs = word.EnumerateRunes().Select(rune => font.GlyphOf(rune.Value)).ToList();
        var shape = new ShapedText(
            word,
            [.. glyphs.Select(id => new Glyph(id, font.AdvanceOf(id), 0, 0, 0))]
        );
        var (width, height) = (paper.Width.Value, paper.Height.Value);
        var diagonal = Math.Sqrt((width * width) + (height * height));
        var size = Math.Min(diagonal * Reach / shape.Advance * font.UnitsPerEm, height / 3);
        var length = shape.Advance * size / font.UnitsPerEm;
        var capitals = font.CapHeight * size / font.UnitsPerEm;
        return GlyphOutlines
            .Of(face, Points.Of(size), shape)
            .Transformed(
                Transform
                    .Move(-length / 2, capitals / 2)
                    .Then(Transform.Turn(-Math.Atan2(height, width) * 180 / Math.PI))
                    .Then(Transform.Move(width / 2, height / 2))
            );
    }
}
