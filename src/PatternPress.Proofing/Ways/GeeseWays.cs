using PatternPress.Proofing.Shapes;

namespace PatternPress.Proofing.Ways;

/// <summary>Flying geese units: a triangle with its long edge along the unit and a small one on either side.</summary>
internal static class GeeseWays
{
    public static UnitWay[] All { get; } =
    [
        // The goose is a quarter of the large square, its long edge an edge of that square; the sky triangles are
        // halves of the small ones, their legs as long as the unit is high. A large and four small make four.
        new(
            "geese-four-at-a-time",
            "geese",
            order =>
                IsGeese(order)
                    ? new WayPlan(
                        [
                            NeededPiece.Square(
                                "large square",
                                0,
                                1,
                                new(SeamLoss.LongEdge, order.Width)
                            ) with
                            {
                                DecidesTrim = true,
                            },
                            NeededPiece.Square(
                                "small square",
                                1,
                                4,
                                new(SeamLoss.Leg, order.Height)
                            ) with
                            {
                                DecidesTrim = true,
                            },
                        ],
                        4,
                        UnitPictures.Geese(order.Height)
                    )
                    : null
        )
        {
            Oversize = true,
        },
        // A square sewn corner to corner over each end of a rectangle: the sewn line meets the unit's seam lines as
        // far from the corner as the square is wide, less two seams.
        new(
            "geese-stitch-and-flip",
            "geese",
            order =>
                IsGeese(order)
                    ? new WayPlan(
                        [
                            new(
                                "rectangle",
                                0,
                                1,
                                new(SeamLoss.Straight, order.Width),
                                new(SeamLoss.Straight, order.Height)
                            ),
                            NeededPiece.Square(
                                "square",
                                1,
                                2,
                                new(SeamLoss.Straight, order.Height)
                            ) with
                            {
                                DecidesTrim = true,
                            },
                        ],
                        1,
                        UnitPictures.Geese(order.Height)
                    )
                    {
                        Flips = 2,
                        Flipped = "square",
                    }
                    : null
        ),
    ];

    private static bool IsGeese(UnitOrder order) =>
        order.Width == order.Height * 2 && order.Roles == 2;
}
