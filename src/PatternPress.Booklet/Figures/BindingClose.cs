using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>The tails of a binding laid along the quilt's edge before they are cut: how far they overlap.</summary>
public static class BindingClose
{
    /// <param name="overlap">The measure of the overlap, as it is printed.</param>
    public static Picture Draw(FabricLook binding, string overlap, Palette palette, FigureRoom room)
    {
        FigureStyle style = palette.Style;
        var draft = new Draft(style);
        double edge = style.Edge.Value,
            width = room.Width.Value - (2 * edge),
            top = draft.DimensionRoom + 2,
            height = room.Height.Value - top - edge;
        var quilt = new Box(edge, top, width, height);
        draft.Area(Paths.Of(quilt), style.Ground);
        double strip = height * 0.5,
            share = 0.16;
        var left = new Box(quilt.X, top, width * (0.5 + share / 2), strip);
        var right = new Box(
            quilt.X + (width * (0.5 - (share / 2))),
            top,
            width * (0.5 + share / 2),
            strip
        );
        Stroke pen = style.Pen(style.Edge) with { Join = StrokeJoin.Miter };
        Ink rim = binding.LetterInk;
        draft.Area(Paths.Of(left), binding.Color, pen, style.IsBlackOnly ? binding.Hatch : null);
        draft.Area(Paths.Of(right), binding.Color, pen, style.IsBlackOnly ? binding.Hatch : null);
        // The end that lies below shows as dashes.
        draft.Lines(
            [(new Spot(left.Right, left.Y + 1), new Spot(left.Right, left.Bottom - 1))],
            style.Pen(style.Edge, rim) with
            {
                Dashes = [Points.Of(2.5), Points.Of(2)],
                Cap = StrokeCap.Butt,
            }
        );
        draft.Lines(
            [(new Spot(right.X, right.Y + 1), new Spot(right.X, right.Bottom - 1))],
            style.Pen(style.Bold, rim)
        );
        // Sewn already at both sides.
        double stitch = top + (strip * 0.22);
        draft.Lines(
            [
                (new Spot(quilt.X, stitch), new Spot(quilt.X + (width * 0.16), stitch)),
                (new Spot(quilt.Right - (width * 0.16), stitch), new Spot(quilt.Right, stitch)),
            ],
            SketchPens.Sewn(style, rim)
        );
        draft.Dimension(new Spot(right.X, top), new Spot(left.Right, top), overlap);
        return new(
            draft.Finish(quilt.Right + edge, quilt.Bottom + edge),
            FigureWords.BindingClose(overlap)
        );
    }
}
