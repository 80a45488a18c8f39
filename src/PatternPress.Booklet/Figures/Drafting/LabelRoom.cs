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
        if (IsConvex(shape))
        {
            return InConvex(shape, width, height, middle);
        }
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

    // How far a box keeps inside an edge's line grows evenly with its center: Across · x + Down · y + Start.
    private readonly record struct Keep(double Across, double Down, double Start)
    {
        public double At(Spot center) => (Across * center.X) + (Down * center.Y) + Start;
    }

    // In a convex shape the best place is where three edges are equally near: few enough to try them all. From there the
    // label may move toward the middle as long as it keeps most of its clearance.
    private static Spot? InConvex(
        ReadOnlySpan<Spot> shape,
        double width,
        double height,
        Spot middle
    )
    {
        var keeps = new List<Keep>(shape.Length);
        for (int i = 0; i < shape.Length; i++)
        {
            Spot a = shape[i],
                along = shape[(i + 1) % shape.Length] - a;
            double length = along.Length;
            if (length == 0)
            {
                continue;
            }
            double across = -along.Y / length,
                down = along.X / length,
                half = ((Math.Abs(across) * width) + (Math.Abs(down) * height)) / 2;
            keeps.Add(new(across, down, -(across * a.X) - (down * a.Y) - half));
        }
        double best = double.MinValue;
        Spot at = middle;
        for (int i = 0; i < keeps.Count; i++)
        {
            for (int j = i + 1; j < keeps.Count; j++)
            {
                for (int k = j + 1; k < keeps.Count; k++)
                {
                    if (EquallyNear(keeps[i], keeps[j], keeps[k]) is { } place)
                    {
                        double clear = Clearance(keeps, place);
                        if (clear > best)
                        {
                            (best, at) = (clear, place);
                        }
                    }
                }
            }
        }
        return best < 0 ? null : Toward(keeps, at, middle, best * 0.85);
    }

    private static double Clearance(List<Keep> keeps, Spot place)
    {
        double least = double.MaxValue;
        foreach (Keep keep in keeps)
        {
            least = Math.Min(least, keep.At(place));
        }
        return least;
    }

    private static Spot? EquallyNear(Keep a, Keep b, Keep c)
    {
        double x1 = a.Across - b.Across,
            y1 = a.Down - b.Down,
            d1 = b.Start - a.Start,
            x2 = a.Across - c.Across,
            y2 = a.Down - c.Down,
            d2 = c.Start - a.Start;
        double cross = (x1 * y2) - (x2 * y1);
        return Math.Abs(cross) < 1e-9
            ? null
            : new Spot(((d1 * y2) - (d2 * y1)) / cross, ((x1 * d2) - (x2 * d1)) / cross);
    }

    // The place nearest the middle where every edge keeps at least so far away; one such place is known.
    private static Spot Toward(List<Keep> keeps, Spot known, Spot middle, double clear)
    {
        if (Clearance(keeps, middle) >= clear)
        {
            return middle;
        }
        Spot nearest = known;
        double least = (known - middle).Length;
        for (int i = 0; i < keeps.Count; i++)
        {
            Keep a = keeps[i];
            double off = clear - a.At(middle);
            Try(middle + (new Spot(a.Across, a.Down) * off));
            for (int j = i + 1; j < keeps.Count; j++)
            {
                Keep b = keeps[j];
                double cross = (a.Across * b.Down) - (b.Across * a.Down);
                if (Math.Abs(cross) > 1e-9)
                {
                    double da = clear - a.Start,
                        db = clear - b.Start;
                    Try(
                        new Spot(
                            ((da * b.Down) - (db * a.Down)) / cross,
                            ((a.Across * db) - (b.Across * da)) / cross
                        )
                    );
                }
            }
        }
        return nearest;

        void Try(Spot place)
        {
            double far = (place - middle).Length;
            if (far < least && Clearance(keeps, place) >= clear - 1e-9)
            {
                (nearest, least) = (place, far);
            }
        }
    }

    // Clockwise and turning right at every corner.
    private static bool IsConvex(ReadOnlySpan<Spot> shape)
    {
        for (int i = 0; i < shape.Length; i++)
        {
            Spot a = shape[i],
                b = shape[(i + 1) % shape.Length],
                c = shape[(i + 2) % shape.Length];
            if (Spot.Cross(b - a, c - b) < -1e-9)
            {
                return false;
            }
        }
        return true;
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
