using PatternPress.Proofing.Shapes;

namespace PatternPress.Proofing.Ways;

/// <summary>Square-in-a-square units: a square on its point, a triangle in each corner.</summary>
internal static class SquareInSquareWays
{
    public static UnitWay[] All { get; } =
    [
        // Four squares flipped over the corners of a large one; their sewn lines meet in the middles of the sides.
        new(
            "square-in-square-quick-corners",
            "square-in-square",
            order =>
                IsSquare(order)
                    ? new WayPlan(
                        [
                            NeededPiece.Square(
                                "large square",
                                0,
                                1,
                                new(SeamLoss.Straight, order.Width)
                            ) with
                            {
                                DecidesTrim = true,
                            },
                            NeededPiece.Square(
                                "corner square",
                                1,
                                4,
                                new(SeamLoss.Straight, order.Width / 2)
                            ),
                        ],
                        1,
                        UnitPictures.SquareInSquare(order.Width)
                    )
                    {
                        Flips = 4,
                        Flipped = "corner square",
                    }
                    : null
        ),
        // The unit is the diagonal of its center; the corners are halves of squares, their legs half the unit.
        new(
            "square-in-square-set-in-triangles",
            "square-in-square",
            order =>
                IsSquare(order)
                    ? new WayPlan(
                        [
                            NeededPiece.Square(
                                "center square",
                                0,
                                1,
                                new(SeamLoss.Straight, order.Width * SeamLoss.SideOfDiagonal)
                            ) with
                            {
                                Critical = true,
                            },
                            NeededPiece.Square(
                                "corner square",
                                1,
                                2,
                                new(SeamLoss.Leg, order.Width / 2)
                            ) with
                            {
                                After = PieceCut.OnceDiagonally,
                                DecidesTrim = true,
                            },
                        ],
                        1,
                        UnitPictures.SquareInSquare(order.Width)
                    )
                    : null
        )
        {
            Oversize = true,
        },
    ];

    private static bool IsSquare(UnitOrder order) =>
        order.Width == order.Height && order.Roles == 2;
}
