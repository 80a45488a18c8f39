using PatternPress.Proofing.Shapes;

namespace PatternPress.Proofing.Ways;

/// <summary>A single patch with a seam on each side.</summary>
internal static class PlainWays
{
    public static UnitWay[] All { get; } =
    [
        new("plain-squares", "square", order => Plan(order, "square")),
        new("plain-rectangles", "rectangle", order => Plan(order, "rectangle")),
    ];

    private static WayPlan? Plan(UnitOrder order, string name) =>
        order.Roles != 1
            ? null
            : new WayPlan(
                [
                    new(
                        name,
                        0,
                        1,
                        new(SeamLoss.Straight, order.Width),
                        new(SeamLoss.Straight, order.Height)
                    ),
                ],
                1,
                UnitPictures.Grid(
                    [
                        [0],
                    ],
                    order.Width,
                    order.Height
                )
            );
}
