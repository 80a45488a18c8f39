using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Model;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// Two strips joined on the diagonal: laid at a right angle, right sides together, sewn across where they cross; then open.
/// </summary>
public static class DiagonalJoin
{
    /// <summary>In widths of a strip: how much of each strip is shown, and how far the ends cross.</summary>
    private const double Shown = 2.6;
    private const double Cross = 0.3;
    private const double Between = 34;

    public static Picture Draw(FabricLook fabric, House house, Palette palette, FigureRoom room)
    {
        FigureStyle style = palette.Style;
        var draft = new Draft(style);
        double edge = style.Bold.Value;
        double scale = Math.Min(
            (room.Width.Value - Between - (2 * edge)) / ((2 * Shown) + Cross + 1),
            (room.Height.Value - (2 * edge)) / (Shown + Cross)
        );
        double seam = house.Seam.Inches.ToDouble() / house.BindingWidth.Inches.ToDouble();
        // The square where the strips overlap begins here, below and left of the crossing ends.
        var square = new Box(edge + ((Shown - 1) * scale), edge + (Cross * scale), scale, scale);
        Strip(draft, fabric, new Box(edge, square.Y, (Shown + Cross) * scale, scale), wrong: false);
        Strip(draft, fabric, new Box(square.X, edge, scale, (Shown + Cross) * scale), wrong: true);
        Spot from = new(square.X, square.Y),
            to = new(square.Right, square.Bottom);
        Spot aside = new Spot(1, -1) * (seam * scale / Math.Sqrt(2));
        draft.Lines([(from, to)], SketchPens.Sewn(style, style.Ink));
        draft.Lines(
            [(from + aside - new Spot(2, 2), to + aside + new Spot(2, 2))],
            SketchPens.Cut(style, style.Ink)
        );
        double x = edge + ((Shown + Cross) * scale);
        draft.Arrow(
            new Spot(x + 9, square.Center.Y),
            new Spot(x + Between - 9, square.Center.Y),
            style.Pen(style.Bold),
            6
        );
        var open = new Box(x + Between, square.Y, (Shown + 1) * scale * 0.9, scale);
        Strip(draft, fabric, open, wrong: false);
        double middle = open.Center.X - (scale / 2);
        draft.Lines(
            [(new Spot(middle, open.Y), new Spot(middle + scale, open.Bottom))],
            style.Pen(style.Edge, fabric.LetterInk)
        );
        return new(
            draft.Finish(open.Right + edge, edge + ((Shown + Cross) * scale) + edge),
            FigureWords.DiagonalJoin(house)
        );
    }

    private static void Strip(Draft draft, FabricLook fabric, Box box, bool wrong) =>
        draft.Area(
            Paths.Of(box),
            wrong ? fabric.WrongSide : fabric.Color,
            draft.Style.Pen(draft.Style.Edge) with
            {
                Join = StrokeJoin.Miter,
            },
            !wrong && draft.Style.IsBlackOnly ? fabric.Hatch : null
        );
}
