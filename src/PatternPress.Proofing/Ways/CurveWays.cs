using PatternPress.Proofing.Shapes;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Proofing.Ways;

/// <summary>A quarter circle set into a square.</summary>
internal static class CurveWays
{
    public static UnitWay[] All { get; } =
    [new("quarter-circle-templates", "quarter-circle", Plan)];

    private static WayPlan? Plan(UnitOrder order)
    {
        Length side = order.Width,
            radius = order.Radius,
            seam = order.Seam;
        if (side != order.Height || order.Roles != 2 || radius <= seam || radius >= side)
        {
            return null;
        }
        return new WayPlan(
            [Piece("quarter circle", 0, radius), Piece("background", 1, side)],
            1,
            UnitPictures.QuarterCircle(side, radius)
        )
        {
            Measures = new Dictionary<string, Length> { ["radius"] = radius },
            Templates =
            [
                Template(
                    "quarter circle",
                    UnitPictures.QuarterCircle(side, radius)[0].Shape,
                    Pie()
                ),
                Template("background", UnitPictures.QuarterCircle(side, radius)[1].Shape, Rest()),
            ],
        };

        static NeededPiece Piece(string name, int role, Length side) =>
            NeededPiece.Square(name, role, 1, new(SeamLoss.Straight, side)) with
            {
                After = PieceCut.AroundTemplate,
            };

        // Both arcs have the seam's center; sewn at the seam's distance from their edges they lie on each other. The cut
        // edge goes on straight where the arc ends, across the allowance of the edge beside it.
        Polygon Pie()
        {
            Length arc = radius + seam;
            return Round(
                3,
                (-seam, arc),
                (-seam, -seam),
                (arc, -seam),
                (arc, Length.Zero),
                (Length.Zero, arc)
            );
        }

        Polygon Rest()
        {
            Length arc = radius - seam,
                far = side + seam;
            return Round(
                1,
                (-seam, arc),
                (Length.Zero, arc),
                (arc, Length.Zero),
                (arc, -seam),
                (far, -seam),
                (far, far),
                (-seam, far)
            );
        }

        static Polygon Round(int edge, params ReadOnlySpan<(Length X, Length Y)> corners)
        {
            var points = new Point[corners.Length];
            for (int i = 0; i < points.Length; i++)
            {
                points[i] = new Point(corners[i].X, corners[i].Y);
            }
            return new Polygon([.. points]) { Arcs = [new QuarterArc(edge, Point.Origin)] };
        }

        // The middle of an arc about the corner lies on the diagonal, as far from the corner as the arc is.
        NeededTemplate Template(string piece, Polygon shape, Polygon cut)
        {
            Length out_ = piece == "background" ? radius - seam : radius + seam;
            return new NeededTemplate(piece, shape, cut, [(On(radius), On(out_))]);
        }

        static Point On(Length far)
        {
            Length way = far * SeamLoss.SideOfDiagonal;
            return new Point(way, way);
        }
    }
}
