using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures.Drafting;

/// <summary>A block's key on a small white plate in its middle, legible on any fabric.</summary>
internal static class KeyPlate
{
    /// <summary>Paints the plate if it leaves enough of the block in sight.</summary>
    /// <param name="aside">Whether it may stand beside the middle, clear of labels that are there already.</param>
    /// <returns>False where the block is too small for it, or has no room left.</returns>
    public static bool TryPaint(
        Draft draft,
        string key,
        Spot center,
        double width,
        double height,
        bool aside = false
    )
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
            if (aside)
            {
                if (Free(draft, center, width, height, plateWidth, plateHeight) is not { } free)
                {
                    continue;
                }
                center = free;
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

    // The place nearest to the middle where nothing is written.
    private static Spot? Free(
        Draft draft,
        Spot center,
        double width,
        double height,
        double plateWidth,
        double plateHeight
    )
    {
        const int steps = 8;
        double reachX = (width - plateWidth) / 2,
            reachY = (height - plateHeight) / 2;
        Spot? best = null;
        for (int row = -steps; row <= steps; row++)
        {
            for (int column = -steps; column <= steps; column++)
            {
                var place = new Spot(
                    center.X + (reachX * column / steps),
                    center.Y + (reachY * row / steps)
                );
                if (
                    (best is not { } known || (place - center).Length < (known - center).Length)
                    && draft.Board.IsFree(Box.Around(place, plateWidth, plateHeight))
                )
                {
                    best = place;
                }
            }
        }
        return best;
    }
}
