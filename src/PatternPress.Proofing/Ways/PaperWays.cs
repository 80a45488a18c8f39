using System.Collections.Immutable;
using PatternPress.Proofing.Shapes;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Tables;

namespace PatternPress.Proofing.Ways;

/// <summary>Sections sewn piece by piece on a printed paper.</summary>
internal static class PaperWays
{
    /// <summary>Every rectangle reaches so far beyond the seam allowance, so that it need not be laid to a thread.</summary>
    private static readonly Length Spare = Length.FromInches(0, 1, 4);

    public static UnitWay[] All { get; } = [new("foundation-paper", "foundation", Plan)];

    private static WayPlan? Plan(UnitOrder order)
    {
        if (
            order.Areas.IsEmpty
            || order.Areas.Any(area => area.Role < 0 || area.Role >= order.Roles)
            || !Fill(order)
        )
        {
            return null;
        }
        var pieces = ImmutableArray.CreateBuilder<NeededPiece>(order.Areas.Length);
        for (int i = 0; i < order.Areas.Length; i++)
        {
            if (SeamOf(order.Areas, i) is not { } seam)
            {
                return null;
            }
            Exact x = (seam.To.X - seam.From.X).Inches,
                y = (seam.To.Y - seam.From.Y).Inches;
            pieces.Add(
                new NeededPiece(
                    $"piece {i + 1}",
                    order.Areas[i].Role,
                    1,
                    Side(order, order.Areas[i].Shape, x, y),
                    Side(order, order.Areas[i].Shape, -y, x)
                )
            );
        }
        return new WayPlan(
            pieces.ToImmutable(),
            1,
            [.. order.Areas.Select(area => new UnitPatch(area.Shape, area.Role))]
        )
        {
            AlwaysTrim = true,
        };
    }

    // All areas lie within the section and are together as large: with the lines between them, nothing is left open.
    private static bool Fill(UnitOrder order)
    {
        Area sum = Area.Zero;
        foreach (FoundationArea area in order.Areas)
        {
            if (
                area.Shape.Corners.Length < 3
                || !area.Shape.Arcs.IsEmpty
                || area.Shape.Area.Sign <= 0
                || area.Shape.Corners.Any(c =>
                    c.X.Sign < 0 || c.Y.Sign < 0 || c.X > order.Width || c.Y > order.Height
                )
            )
            {
                return false;
            }
            sum += area.Shape.Area;
        }
        return sum == order.Width * order.Height;
    }

    /// <summary>
    /// The line a piece is sewn on along: all that is sewn so far lies on one side of it, the piece on the other, so that one
    /// straight seam joins them. The first piece has none and is laid level. Null where there is no such line.
    /// </summary>
    private static (Point From, Point To)? SeamOf(ImmutableArray<FoundationArea> areas, int index)
    {
        if (index == 0)
        {
            return (Point.Origin, new Point(Length.FromInches(1), Length.Zero));
        }
        ImmutableArray<Point> corners = areas[index].Shape.Corners;
        for (int i = 0; i < corners.Length; i++)
        {
            Point from = corners[i],
                to = corners[(i + 1) % corners.Length];
            bool apart = corners.All(c => Side(from, to, c) <= 0);
            for (int earlier = 0; earlier < index && apart; earlier++)
            {
                apart = areas[earlier].Shape.Corners.All(c => Side(from, to, c) >= 0);
            }
            if (apart)
            {
                return (from, to);
            }
        }
        return null;

        // Which hand of one going along the line a place lies at: 1 for the left.
        static int Side(Point from, Point to, Point place) =>
            (
                ((to.Y - from.Y).Inches * (place.X - from.X).Inches)
                - ((to.X - from.X).Inches * (place.Y - from.Y).Inches)
            ).Sign;
    }

    // The first mark of the ruler at which a strip along a direction holds the piece with its seams and what is spare: told by
    // squares, since the direction's own length is a root.
    private static PieceSide Side(UnitOrder order, Polygon shape, Exact x, Exact y)
    {
        Exact least = Along(shape.Corners[0]),
            most = least;
        foreach (Point corner in shape.Corners)
        {
            Exact at = Along(corner);
            least = at < least ? at : least;
            most = at > most ? at : most;
        }
        Exact reach = (most - least) * (most - least),
            unit = (x * x) + (y * y);
        Length around = (order.Seam + Spare) * 2,
            step = order.Ruler.Step;
        // By halving: the marks below the first do not hold it, the others do.
        long low = 0,
            high = 1;
        while (!Holds(high))
        {
            (low, high) = (high, high * 2);
        }
        while (high - low > 1)
        {
            long middle = (low + high) / 2;
            (low, high) = Holds(middle) ? (low, middle) : (middle, high);
        }
        return new PieceSide(SeamLoss.Straight, (step * high) - (order.Seam * 2));

        Exact Along(Point place) => (place.X.Inches * x) + (place.Y.Inches * y);

        bool Holds(long marks)
        {
            Exact net = ((step * marks) - around).Inches;
            return net.Sign >= 0 && net * net * unit >= reach;
        }
    }
}
