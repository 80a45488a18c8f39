using PatternPress.Proofing.Shapes;

namespace PatternPress.Proofing.Ways;

/// <summary>A square or rectangle with some of its corners in other fabrics.</summary>
internal static class CornerWays
{
    public static UnitWay[] All { get; } = [new("corners-stitch-and-flip", "corners", Plan)];

    private static WayPlan? Plan(UnitOrder order)
    {
        string corners = order.Variant;
        if (
            corners.Length is < 1 or > 4
            || corners.Any(corner => corner is < '0' or > '3')
            || corners.Distinct().Count() != corners.Length
            || order.Roles != corners.Length + 1
        )
        {
            return null;
        }
        return new WayPlan(
            [
                new(
                    order.Width == order.Height ? "large square" : "rectangle",
                    corners.Length,
                    1,
                    new(SeamLoss.Straight, order.Width),
                    new(SeamLoss.Straight, order.Height)
                ),
                .. Enumerable
                    .Range(0, corners.Length)
                    .Select(role =>
                        NeededPiece.Square(
                            "corner square",
                            role,
                            1,
                            new(SeamLoss.Straight, order.Corner)
                        )
                    ),
            ],
            1,
            UnitPictures.Corners(order.Width, order.Height, order.Corner, corners)
        )
        {
            Flips = corners.Length,
            Flipped = "corner square",
        };
    }
}
