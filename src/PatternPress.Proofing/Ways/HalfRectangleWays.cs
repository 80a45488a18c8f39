using PatternPress.Proofing.Shapes;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Proofing.Ways;

/// <summary>
/// Half-rectangle triangle units: a rectangle of two triangles. Two rectangles give four triangles and these two units. Here
/// the triangles are laid out as sewn, and the unit that is to be trimmed from them is laid on their seam, corner by corner.
/// </summary>
internal static class HalfRectangleWays
{
    public static UnitWay[] All { get; } =
    [
        new("half-rectangle-two-at-a-time", "half-rectangle", Plan) { Oversize = true },
        new("half-rectangle-single-triangles", "half-rectangle", Plan) { Oversize = true },
    ];

    private static WayPlan? Plan(UnitOrder order)
    {
        if (
            order.Roles != 2
            || order.Width >= order.Height
            || order.Variant is not ("left" or "right")
        )
        {
            return null;
        }
        NeededPiece rectangle = new(
            "rectangle",
            0,
            1,
            new(SeamLoss.Straight, order.Width),
            new(SeamLoss.Straight, order.Height)
        )
        {
            Fits = (width, height) => Holds(width, height, order),
        };
        return new WayPlan(
            [rectangle, rectangle with { Role = 1 }],
            2,
            UnitPictures.HalfRectangle(order.Width, order.Height, order.Variant == "right")
        )
        {
            Trims = true,
        };
    }

    // A triangle with its right angle in the origin and legs along the axes is sewn at the seam from its long edge to one
    // turned by half about the middle of that seam.
    private static bool Holds(Length width, Length height, UnitOrder order)
    {
        (double w, double h) = (D(width), D(height));
        double seam = D(order.Seam),
            slope = Math.Atan2(h, w);
        // Where the seam leaves the triangle: along a leg, the seam lies seam / sin of the angle at its end from it.
        double legX = w - (seam / Math.Sin(slope)),
            legY = h - (seam / Math.Cos(slope));
        if (legX <= 0 || legY <= 0)
        {
            return false;
        }
        // The finished diagonal lies on the seam, its middle on the seam's.
        (double a, double b) = (D(order.Width), D(order.Height));
        double turn = Math.Atan2(b, a) - slope;
        (double x, double y)[] corners =
        [
            (-(a / 2) - seam, -(b / 2) - seam),
            ((a / 2) + seam, -(b / 2) - seam),
            ((a / 2) + seam, (b / 2) + seam),
            (-(a / 2) - seam, (b / 2) + seam),
        ];
        foreach ((double x, double y) in corners)
        {
            double placedX = (legX / 2) + (x * Math.Cos(turn)) - (y * Math.Sin(turn)),
                placedY = (legY / 2) + (x * Math.Sin(turn)) + (y * Math.Cos(turn));
            // On this side of the seam within the first triangle, beyond it within the other.
            bool first = (placedX / legX) + (placedY / legY) <= 1;
            (double inX, double inY) = first
                ? (placedX, placedY)
                : (legX - placedX, legY - placedY);
            if (inX < -Tolerance || inY < -Tolerance)
            {
                return false;
            }
        }
        return true;
    }

    // Far below what a blade can follow; the roots of the diagonals are no exact numbers here.
    private const double Tolerance = 1e-5;

    private static double D(Length length) => length.Inches.ToDouble();
}
