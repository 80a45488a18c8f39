using CsCheck;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Union;
using PatternPress.Booklet.Figures.Drafting;

namespace PatternPress.Tests.Booklet.Figures.Drafting;

public sealed class SeamLinesTests
{
    [Test]
    public void Two_squares_side_by_side_have_one_outline()
    {
        var lines = Of(Square(0, 0, 1), Square(1, 0, 1));
        lines.Outline().Single().Length.ShouldBe(4);
        lines.Seams().Count.ShouldBe(5);
    }

    [Test]
    public void A_long_edge_cancels_against_short_ones()
    {
        var lines = Of(Square(0, 0, 2), Square(2, 0, 1), Square(2, 1, 1));
        lines.Outline().Single().Length.ShouldBe(4);
    }

    [Test]
    public void A_ring_has_an_outline_and_a_hole()
    {
        var patches = new List<Spot[]>();
        for (int i = 0; i < 9; i++)
        {
            if (i != 4)
            {
                patches.Add(Square(i % 3, i / 3, 1));
            }
        }
        List<Spot[]> loops = Of([.. patches]).Outline();
        loops.Count.ShouldBe(2);
        loops.Sum(AreaOf).ShouldBe(8, 1e-9);
        loops.Min(AreaOf).ShouldBe(-1, 1e-9);
    }

    [Test]
    public void Squares_that_touch_at_a_corner_keep_their_area() =>
        Of(Square(0, 0, 1), Square(1, 1, 1)).Outline().Sum(AreaOf).ShouldBe(2, 1e-9);

    [Test]
    public void Neighbours_share_the_length_of_their_seam()
    {
        var lines = new SeamLines();
        lines.Add(Square(0, 0, 2), tag: 1);
        lines.Add(Square(2, 0, 1), tag: 2);
        lines.Add(Square(2, 1, 1), tag: 3);
        lines
            .Neighbors()
            .Select(n => (n.Key, Math.Round(n.Value, 9)))
            .ShouldBe([((1, 2), 1.0), ((1, 3), 1.0), ((2, 3), 1.0)]);
    }

    [Test]
    public void Any_choice_of_patches_keeps_area_and_seams()
    {
        // A grid of squares, each whole or cut once or twice diagonally, of which some are taken; stretched by √2 and
        // thirds so that corners are not round numbers. Checked against a geometry library's union.
        Gen<(int Cut, bool First, bool Second)[]> grid = Gen.Select(
            Gen.Int[0, 3],
            Gen.Bool,
            Gen.Bool
        ).Array[20];
        Gen.Select(grid, Gen.Int[0, 3])
            .Sample(
                (cells, stretch) =>
                {
                    double scale = new[] { 1, Math.Sqrt(2), 1.0 / 3, 0.7 }[stretch];
                    List<Spot[]> patches = Patches(cells, scale);
                    if (patches.Count == 0)
                    {
                        return;
                    }
                    var lines = Of([.. patches]);
                    Geometry union = UnaryUnionOp.Union(patches.Select(ToNts).ToList<Geometry>());
                    List<Spot[]> outline = lines.Outline();
                    outline.Sum(AreaOf).ShouldBe(patches.Sum(AreaOf), 1e-6);
                    outline
                        .Sum(loop =>
                            loop.Select((p, i) => (loop[(i + 1) % loop.Length] - p).Length).Sum()
                        )
                        .ShouldBe(union.Boundary.Length, 1e-6);
                    Geometry seams = UnaryUnionOp.Union(
                        patches.Select(p => ToNts(p).Boundary).ToList()
                    );
                    lines.Seams().Sum(s => (s.To - s.From).Length).ShouldBe(seams.Length, 1e-6);
                },
                iter: 40
            );
    }

    private static List<Spot[]> Patches((int Cut, bool First, bool Second)[] cells, double scale)
    {
        var patches = new List<Spot[]>();
        for (int i = 0; i < cells.Length; i++)
        {
            double x = i % 5 * scale,
                y = i / 5 * scale;
            Spot a = new(x, y),
                b = new(x + scale, y),
                c = new(x + scale, y + scale),
                d = new(x, y + scale),
                m = new(x + (scale / 2), y + (scale / 2));
            (int cut, bool first, bool second) = cells[i];
            Spot[][] whole = cut switch
            {
                0 =>
                [
                    [a, b, c, d],
                ],
                1 =>
                [
                    [a, b, d],
                    [b, c, d],
                ],
                2 =>
                [
                    [a, b, c],
                    [a, c, d],
                ],
                _ =>
                [
                    [a, b, m],
                    [b, c, m],
                    [c, d, m],
                    [d, a, m],
                ],
            };
            for (int n = 0; n < whole.Length; n++)
            {
                if (n % 2 == 0 ? first : second)
                {
                    patches.Add(whole[n]);
                }
            }
        }
        return patches;
    }

    private static SeamLines Of(params Spot[][] patches)
    {
        var lines = new SeamLines();
        foreach (Spot[] patch in patches)
        {
            lines.Add(patch);
        }
        return lines;
    }

    private static Spot[] Square(double x, double y, double side) =>
        new Box(x, y, side, side).Corners();

    private static double AreaOf(Spot[] loop) =>
        loop.Select((p, i) => Spot.Cross(p, loop[(i + 1) % loop.Length])).Sum() / 2;

    private static Polygon ToNts(Spot[] shape)
    {
        Coordinate[] ring = [.. shape.Select(p => new Coordinate(p.X, p.Y))];
        return new Polygon(new LinearRing([.. ring, ring[0]]));
    }
}
