using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures.Drafting;

/// <summary>
/// The pens of lines that mean something: each is told from the others by its dashes alone, in any ink.
/// </summary>
internal static class SketchPens
{
    /// <summary>Drawn by the maker: long dashes.</summary>
    public static Stroke Marked(FigureStyle style, Ink ink) =>
        style.Pen(style.Seam, ink) with
        {
            Dashes = [Points.Of(5), Points.Of(2)],
            Cap = StrokeCap.Butt,
        };

    /// <summary>A seam: short stitches.</summary>
    public static Stroke Sewn(FigureStyle style, Ink ink) =>
        style.Pen(style.Bold, ink) with
        {
            Dashes = [Points.Of(1.8), Points.Of(1.5)],
            Cap = StrokeCap.Butt,
        };

    /// <summary>A cut: bold dash and dot.</summary>
    public static Stroke Cut(FigureStyle style, Ink ink) =>
        style.Pen(style.Bold, ink) with
        {
            Dashes = [Points.Of(7), Points.Of(2), Points.Of(1.2), Points.Of(2)],
            Cap = StrokeCap.Butt,
        };

    /// <summary>A fold or a seam that is there already: a thin whole line.</summary>
    public static Stroke Fold(FigureStyle style, Ink ink) => style.Pen(style.Seam, ink);
}
