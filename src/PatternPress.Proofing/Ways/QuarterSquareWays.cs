using System.Collections.Immutable;
using PatternPress.Proofing.Shapes;

namespace PatternPress.Proofing.Ways;

/// <summary>Quarter-square triangle units: a square of four triangles that meet in its center.</summary>
internal static class QuarterSquareWays
{
    public static UnitWay[] All { get; } =
    [
        // Half-square units two at a time, and these two at a time again, seams crossed: from two squares two units.
        // With a third fabric half-square units of two kinds are crossed: from four squares four units.
        new(
            "quarter-square-two-at-a-time",
            "quarter-square",
            order =>
                order.Variant switch
                {
                    "2" => Plan(order, [1, 1], 2),
                    "3" => Plan(order, [2, 1, 1], 4),
                    _ => null,
                }
        )
        {
            Oversize = true,
        },
        // Squares cut corner to corner both ways give four triangles each; a unit takes one for each of its sides.
        new(
            "quarter-square-single-triangles",
            "quarter-square",
            order =>
                order.Variant switch
                {
                    "2" => Plan(order, [1, 1], 2, PieceCut.TwiceDiagonally),
                    "3" => Plan(order, [2, 1, 1], 4, PieceCut.TwiceDiagonally),
                    "4" => Plan(order, [1, 1, 1, 1], 4, PieceCut.TwiceDiagonally),
                    _ => null,
                }
        )
        {
            Oversize = true,
        },
    ];

    private static WayPlan? Plan(
        UnitOrder order,
        ImmutableArray<int> squares,
        long yield,
        PieceCut after = PieceCut.None
    )
    {
        if (order.Width != order.Height || order.Roles != squares.Length)
        {
            return null;
        }
        // The long edge of each triangle is the unit's own edge and a side of the square it is cut from.
        var side = new PieceSide(SeamLoss.LongEdge, order.Width);
        return new WayPlan(
            [
                .. squares.Select(
                    (count, role) =>
                        NeededPiece.Square("square", role, count, side) with
                        {
                            After = after,
                            DecidesTrim = true,
                        }
                ),
            ],
            yield,
            UnitPictures.QuarterSquare(order.Width, order.Variant)
        );
    }
}
