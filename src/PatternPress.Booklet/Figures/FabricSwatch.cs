using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>A small piece of a fabric for tables and legends: colour and print on the left, hatch and letter on the right.</summary>
public static class FabricSwatch
{
    /// <summary>A print is shown at about this scale: larger than true, so that its kind is seen.</summary>
    private const double PointsPerInch = 5;

    /// <param name="room">Filled whole.</param>
    public static Picture Draw(FabricLook look, FigureStyle style, FigureRoom room)
    {
        var draft = new Draft(style);
        double half = style.Seam.Value / 2;
        Paint(
            draft,
            look,
            new Box(half, half, room.Width.Value - (2 * half), room.Height.Value - (2 * half))
        );
        return new(draft.Finish(room.Width.Value, room.Height.Value), FigureWords.Swatch(look));
    }

    /// <summary>A swatch in a box of another drawing. A box too narrow for both halves shows colour, hatch and letter in one.</summary>
    internal static void Paint(Draft draft, FabricLook look, Box box)
    {
        FigureStyle style = draft.Style;
        double size = style.Small.Value;
        double letter = LabelSize.Width(look.Key, size) + 4;
        bool halves = box.Width >= 2 * Math.Max(letter, box.Height * 0.6) && !style.IsBlackOnly;
        Box right = halves ? new(box.X + (box.Width / 2), box.Y, box.Width / 2, box.Height) : box;
        if (halves)
        {
            Box left = new(box.X, box.Y, box.Width / 2, box.Height);
            ClothPainter.Paint(draft, Paths.Of(left), look, PointsPerInch, new(left.X, left.Y));
        }
        draft.Area(Paths.Of(right), look.Color, hatch: look.Hatch);
        draft.Area(Paths.Of(box), stroke: style.Pen(style.Seam) with { Join = StrokeJoin.Miter });
        if (right.Width >= letter && right.Height >= (size * LabelSize.Capital) + 2)
        {
            draft.Label(
                look.Key,
                right.Center,
                style.Small,
                bold: true,
                look.LetterInk,
                plate: look.Color
            );
        }
    }
}
