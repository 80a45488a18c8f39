using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures.Drafting;

/// <summary>A block's or unit's key on a small white plate, legible on any fabric.</summary>
internal static class KeyPlate
{
    /// <summary>Paints the plate if it leaves enough of the block in sight.</summary>
    /// <param name="aside">Whether it may stand elsewhere, clear of labels that are there already.</param>
    /// <param name="corner">Whether it stands in the upper left corner, where the middle is worth seeing.</param>
    /// <param name="size">The size of its letters; the largest that has room, if none is given.</param>
    /// <returns>False where the block is too small for it, or has no room left.</returns>
    public static bool TryPaint(
        Draft draft,
        string key,
        Spot center,
        double width,
        double height,
        bool aside = false,
        bool corner = false,
        Points? size = null
    )
    {
        FigureStyle style = draft.Style;
        foreach (Points letters in size is { } given ? [given] : Sizes(style))
        {
            if (!Fits(key, letters, width, height))
            {
                continue;
            }
            (double plateWidth, double plateHeight) = PlateOf(key, letters);
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
            draft.Label(key, place, letters, bold: true);
            return true;
        }
        return false;
    }

    /// <summary>The largest letters that all keys of a picture have room for in their blocks; null where there are none.</summary>
    public static Points? SizeForAll(
        FigureStyle style,
        IReadOnlyCollection<(string Key, double Width, double Height)> blocks
    )
    {
        foreach (Points letters in Sizes(style))
        {
            double share = letters == style.Small ? MostOfBlock : WellInBlock;
            if (blocks.All(block => Fits(block.Key, letters, block.Width, block.Height, share)))
            {
                return letters;
            }
        }
        return null;
    }

    private static Points[] Sizes(FigureStyle style) => [style.Large, style.Medium, style.Small];

    /// <summary>The part of a block's width and height that a plate may take.</summary>
    private const double MostOfBlock = 0.62;

    /// <summary>The part that leaves the block well in sight: larger letters take no more.</summary>
    private const double WellInBlock = 0.45;

    private static bool Fits(
        string key,
        Points letters,
        double width,
        double height,
        double share = MostOfBlock
    )
    {
        (double plateWidth, double plateHeight) = PlateOf(key, letters);
        return plateWidth <= width * share && plateHeight <= height * share;
    }

    private static (double Width, double Height) PlateOf(string key, Points letters)
    {
        double height = (letters.Value * LabelSize.Capital) + 4;
        return (Math.Max(LabelSize.Width(key, letters.Value) + 4, height), height);
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
