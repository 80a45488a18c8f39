using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures.Drafting;

/// <summary>A block's or unit's key on a small white plate, legible on any fabric.</summary>
internal static class KeyPlate
{
    /// <summary>Paints the plate if it leaves enough of the block in sight.</summary>
    /// <param name="aside">Whether it may stand elsewhere, clear of labels that are there already.</param>
    /// <param name="corner">Whether it stands in the upper left corner, where the middle is worth seeing.</param>
    /// <returns>False where the block is too small for it, or has no room left.</returns>
    public static bool TryPaint(
        Draft draft,
        string key,
        Spot center,
        double width,
        double height,
        bool aside = false,
        bool corner = false
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
            Spot place = corner
                ? new Spot(
                    center.X - ((width - plateWidth) / 2) + FromEdge,
                    center.Y - ((height - plateHeight) / 2) + FromEdge
                )
                : center;
            if (aside)
            {
                if (
                    Free(draft, center, place, width, height, plateWidth, plateHeight)
                    is not { } free
                )
                {
                    continue;
                }
                place = free;
            }
            Box plate = Box.Around(place, plateWidth, plateHeight);
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
            draft.Label(key, place, size, bold: true);
            return true;
        }
        return false;
    }

    private const double FromEdge = 1;

    // The place nearest to the one wished for where nothing is written.
    private static Spot? Free(
        Draft draft,
        Spot center,
        Spot wish,
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
                    (best is not { } known || (place - wish).Length < (known - wish).Length)
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
