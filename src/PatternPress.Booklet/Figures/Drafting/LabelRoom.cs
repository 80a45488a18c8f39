namespace PatternPress.Booklet.Figures.Drafting;

/// <summary>Finds the best place for a label's box inside a shape.</summary>
internal static class LabelRoom
{
    /// <summary>
    /// The center of a box that lies inside the shape as far from its edges as can be, near the middle where
    /// several places are as good; null if the box does not fit.
    /// </summary>
    /// <param name="shape">A simple polygon.</param>
    public static Spot? Find(ReadOnlySpan<Spot> shape, double width, double height)
    {
        var bounds = Box.Of(shape);
        if (bounds.Width < width || bounds.Height < height)
        {
            return null;
        }
        Spot middle = CentroidOf(shape);
        Spot best = middle;
        double bestWorth = WorthOf(shape, middle, width, height, middle);
        const int grid = 7;
        double stepX = (bounds.Width - width) / (grid - 1),
            stepY = (bounds.Height - height) / (grid - 1);
        for (int row = 0; row < grid; row++)
        {
            for (int column = 0; column < grid; column++)
            {
                var place = new Spot(
                    bounds.X + (width / 2) + (column * stepX),
                    bounds.Y + (height / 2) + (row * stepY)
                );
                Try(shape, place);
            }
        }
        // From the best of the grid walk uphill with ever smaller steps.
        for (double step = Math.Max(stepX, stepY) / 2; step > 0.02; step /= 2)
        {
            for (bool better = true; better; )
            {
                better = false;
                Spot from = best;
                for (int way = 0; way < 8; way++)
                {
                    (int dx, int dy) = Ways[way];
                    better |= Try(shape, from + new Spot(dx * step, dy * step));
                }
            }
        }
        return SlackOf(shape, best, width, height) >= 0 ? best : null;

        bool Try(ReadOnlySpan<Spot> polygon, Spot place)
        {
            double worth = WorthOf(polygon, place, width, height, middle);
            if (worth <= bestWorth + 1e-9)
            {
                return false;
            }
            best = place;
            bestWorth = worth;
            return true;
        }
    }

    private static readonly (int X, int Y)[] Ways =
    [
        (1, 0),
        (-1, 0),
        (0, 1),
        (0, -1),
        (1, 1),
        (-1, -1),
        (1, -1),
        (-1, 1),
    ];

    // Much room counts most; beyond that, nearness to the middle.
    private static double WorthOf(
        ReadOnlySpan<Spot> shape,
        Spot place,
        double width,
        double height,
        Spot middle
    ) => SlackOf(shape, place, width, height) - (0.02 * (place - middle).Length);

    /// <summary>How far a box inside a shape keeps from its edges; negative if it does not lie inside.</summary>
    public static double SlackOf(ReadOnlySpan<Spot> shape, Spot center, double width, double height)
    {
        if (!Holds(shape, center))
        {
            return -DistanceTo(shape, center) - width - height;
        }
        double halfWidth = width / 2,
            halfHeight = height / 2;
        double slack = double.MaxValue;
        for (int i = 0; i < shape.Length; i++)
        {
            Spot a = shape[i],
                b = shape[(i + 1) % shape.Length];
            slack = Math.Min(slack, BoxToEdge(a - center, b - center, halfWidth, halfHeight));
        }
        return slack;
    }

    /// <summary>Whether a box and a shape share any place.</summary>
    public static bool Touches(ReadOnlySpan<Spot> shape, Box box)
    {
        if (Holds(shape, box.Center))
        {
            return true;
        }
        for (int i = 0; i < shape.Length; i++)
        {
            Spot a = shape[i] - box.Center,
                b = shape[(i + 1) % shape.Length] - box.Center;
            if (BoxToEdge(a, b, box.Width / 2, box.Height / 2) < 0)
            {
                return true;
            }
        }
        return false;
    }

    /// <summary>Whether a place lies inside a polygon (even-odd rule).</summary>
    public static bool Holds(ReadOnlySpan<Spot> shape, Spot place)
    {
        bool inside = false;
        for (int i = 0, j = shape.Length - 1; i < shape.Length; j = i++)
        {
            Spot a = shape[i],
                b = shape[j];
            if (
                (a.Y > place.Y) != (b.Y > place.Y)
                && place.X < ((b.X - a.X) * (place.Y - a.Y) / (b.Y - a.Y)) + a.X
            )
            {
                inside = !inside;
            }
        }
        return inside;
    }

    public static Spot CentroidOf(ReadOnlySpan<Spot> shape)
    {
        double area = 0,
            x = 0,
            y = 0;
        Spot origin = shape[0];
        for (int i = 1; i + 1 < shape.Length; i++)
        {
            Spot a = shape[i] - origin,
                b = shape[i + 1] - origin;
            double cross = Spot.Cross(a, b);
            area += cross;
            x += (a.X + b.X) * cross;
            y += (a.Y + b.Y) * cross;
        }
        return area == 0 ? origin : origin + new Spot(x / (3 * area), y / (3 * area));
    }

    private static double DistanceTo(ReadOnlySpan<Spot> shape, Spot place)
    {
        double least = double.MaxValue;
        for (int i = 0; i < shape.Length; i++)
        {
            Spot a = shape[i],
                b = shape[(i + 1) % shape.Length];
            least = Math.Min(least, ToSegment(place, a, b));
        }
        return least;
    }

    private static double ToSegment(Spot p, Spot a, Spot b)
    {
        Spot along = b - a;
        double squared = Spot.Dot(along, along);
        double share = squared == 0 ? 0 : Math.Clamp(Spot.Dot(p - a, along) / squared, 0, 1);
        return (p - (a + (along * share))).Length;
    }

    // Distance between a box about the origin and an edge; negative by how deep the edge cuts in.
    private static double BoxToEdge(Spot a, Spot b, double halfWidth, double halfHeight)
    {
        Spot along = b - a;
        double length = along.Length;
        if (length == 0)
        {
            return double.MaxValue;
        }
        var normal = new Spot(-along.Y / length, along.X / length);
        double fromLine =
            Math.Abs(Spot.Dot(a, normal))
            - (Math.Abs(normal.X) * halfWidth)
            - (Math.Abs(normal.Y) * halfHeight);
        // The edge may end before it comes beside the box: then the box's own sides part them.
        double besideX = Math.Max(Math.Min(a.X, b.X) - halfWidth, -Math.Max(a.X, b.X) - halfWidth);
        double besideY = Math.Max(
            Math.Min(a.Y, b.Y) - halfHeight,
            -Math.Max(a.Y, b.Y) - halfHeight
        );
        return Math.Max(fromLine, Math.Max(besideX, besideY));
    }
}
