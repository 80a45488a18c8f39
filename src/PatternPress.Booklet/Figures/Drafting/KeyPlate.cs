using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures.Drafting;

/// <summary>A block's key on a small white plate in its middle, legible on any fabric.</summary>
internal static class KeyPlate
{
    /// <summary>Paints the plate if it leaves enough of the block in sight.</summary>
    /// <returns>False where the block is too small for it.</returns>
    public static bool TryPaint(Draft draft, string key, Spot center, double width, double height)
    {
        FigureStyle style = draft.Style;
        foreach (Points size in new[] { style.Large, style.Medium, style.Small })
        {
            double plateWidth = LabelSize.Width(key, size.Value) + 4,
                plateHeight = (size.Value * LabelSize.Capital) + 4;
            plateWidth = Math.Max(plateWidth, plateHeight);
            if (plateWidth > width * 0.62 || plateHeight > height * 0.62)
            {
                continue;
            }
            Box plate = Box.Around(center, plateWidth, plateHeight);
            draft.Area(
                VectorPath.RoundedRectangle(
                    Math.Round(plate.X, 2),
                    Math.Round(plate.Y, 2),
                    Math.Round(plate.Width, 2),
                    Math.Round(plate.Height, 2),
                    2
                ),
                Ink.White,
                style.Pen(style.Hair)
            );
            draft.Label(key, center, size, bold: true);
            return true;
        }
        return false;
    }
}
