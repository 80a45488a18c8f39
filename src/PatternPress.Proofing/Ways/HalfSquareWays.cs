using PatternPress.Proofing.Shapes;
using PatternPress.Quilting.Measures;

namespace PatternPress.Proofing.Ways;

/// <summary>Half-square triangle units: a square of two triangles.</summary>
internal static class HalfSquareWays
{
    public static UnitWay[] All { get; } =
    [
        // Two squares, sewn on both sides of a diagonal and cut on it: two units, each of two half squares.
        new("half-square-two-at-a-time", "half-square", order => Plan(order, "square", 1, 2))
        {
            Oversize = true,
        },
        // Squares cut once corner to corner; a triangle of each: two units from a square of each.
        new(
            "half-square-single-triangles",
            "half-square",
            order => Plan(order, "square", 1, 2, PieceCut.OnceDiagonally)
        )
        {
            Oversize = true,
        },
        // Two squares sewn on both sides of both diagonals, cut in quarters and on the diagonals: each quarter is a
        // pair of squares sewn two at a time.
        new(
            "half-square-eight-at-a-time",
            "half-square",
            order => Plan(order, "large square", 2, 8)
        )
        {
            Oversize = true,
        },
    ];

    private static WayPlan? Plan(
        UnitOrder order,
        string piece,
        long quarters,
        long yield,
        PieceCut after = PieceCut.None
    )
    {
        if (order.Width != order.Height || order.Roles != 2)
        {
            return null;
        }
        var side = new PieceSide(new Rational(1, quarters), SeamLoss.Leg, order.Width);
        return new WayPlan([Of(0), Of(1)], yield, UnitPictures.HalfSquare(order.Width))
        {
            Halved = quarters > 1 ? piece : "",
        };

        NeededPiece Of(int role) =>
            NeededPiece.Square(piece, role, 1, side) with
            {
                After = after,
                DecidesTrim = true,
            };
    }
}
