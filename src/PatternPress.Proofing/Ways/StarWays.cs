using System.Collections.Immutable;
using PatternPress.Proofing.Shapes;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Proofing.Ways;

/// <summary>
/// Eight-pointed stars. Seen from the middle, the tips and the inner points of the background lie on eight rays each: an inner
/// point a diamond's side away, and a tip where two diamonds' sides laid end to end, turned by an eighth, lead.
/// </summary>
internal static class StarWays
{
    public static UnitWay[] All { get; } =
    [
        new(
            "eight-point-star-set-in",
            "eight-point-star",
            order =>
                Plan(
                    order,
                    false,
                    (diamond, ground) =>
                        [
                            NeededPiece.Square(
                                "corner square",
                                ground,
                                4,
                                new(SeamLoss.Straight, diamond)
                            ) with
                            {
                                DecidesTrim = true,
                            },
                            // A quarter of it has its long edge along the edge of the star.
                            NeededPiece.Square(
                                "side square",
                                ground,
                                1,
                                new(SeamLoss.LongEdge, diamond * Exact.SquareRootOfTwo)
                            ) with
                            {
                                After = PieceCut.TwiceDiagonally,
                                DecidesTrim = true,
                            },
                        ]
                )
        )
        {
            Oversize = true,
        },
        new(
            "eight-point-star-split-background",
            "eight-point-star",
            order =>
                Plan(
                    order,
                    true,
                    (diamond, ground) =>
                        [
                            NeededPiece.Square(
                                "large square",
                                ground,
                                4,
                                new(SeamLoss.Leg, diamond)
                            ) with
                            {
                                After = PieceCut.OnceDiagonally,
                                DecidesTrim = true,
                            },
                            NeededPiece.Square(
                                "small square",
                                ground,
                                4,
                                new(SeamLoss.Leg, diamond * SeamLoss.SideOfDiagonal)
                            ) with
                            {
                                After = PieceCut.OnceDiagonally,
                                DecidesTrim = true,
                            },
                        ]
                )
        )
        {
            Oversize = true,
        },
    ];

    private static WayPlan? Plan(
        UnitOrder order,
        bool split,
        Func<Length, int, ImmutableArray<NeededPiece>> background
    )
    {
        string[] words = order.Variant.Split(' ');
        if (
            order.Width != order.Height
            || words.Length != 2
            || words[0] != (split ? "split" : "whole")
            || words[1] is not ("1" or "2" or "8")
            || words[1] != $"{order.Roles - 1}"
        )
        {
            return null;
        }
        int rays = order.Roles - 1;
        // Along an edge of the star lie a square, the long edge of a triangle and a square: 1 + √2 + 1 diamonds' sides.
        // 1 / (2 + √2) = (2 − √2) / 2.
        Length diamond = order.Width * new Exact(2, -1) / 2;
        // A diamond sliced from a strip is as high as the strip less its two seams: its side by √2.
        Length strip = diamond * SeamLoss.SideOfDiagonal;
        return new WayPlan(
            [
                .. Enumerable
                    .Range(0, rays)
                    .Select(role => new NeededPiece(
                        "diamond",
                        role,
                        8 / rays,
                        new(Exact.Zero, order.StripLength),
                        new(SeamLoss.Straight, strip),
                        PieceCut.AcrossAtFortyFive,
                        WholeStrip: true
                    )
                    {
                        Critical = true,
                        InStrip = height => Slices(height, order.StripLength),
                    }),
                .. background(diamond, rays),
            ],
            1,
            Picture(order.Width, diamond, rays, split)
        );
    }

    // The first diamond takes its long side and its slant, every further one its side: so many as stay within the strip.
    private static long Slices(Length height, Length strip)
    {
        Length side = height * Exact.SquareRootOfTwo,
            end = height;
        long slices = 0;
        while (slices < MostSlices && end + side <= strip)
        {
            end += side;
            slices++;
        }
        return slices;
    }

    private const long MostSlices = 100_000;

    private static ImmutableArray<UnitPatch> Picture(
        Length side,
        Length diamond,
        int rays,
        bool split
    )
    {
        Length half = side / 2;
        Point center = new(half, half);
        // An inner point lies a diamond's side from the center; ways in eighths of a turn, 0 to the right, clockwise.
        Point Step(Point from, int eighth)
        {
            Length straight = diamond,
                slant = diamond * SeamLoss.SideOfDiagonal;
            (Length x, Length y) = (((eighth % 8) + 8) % 8) switch
            {
                0 => (straight, Length.Zero),
                1 => (slant, slant),
                2 => (Length.Zero, straight),
                3 => (-slant, slant),
                4 => (-straight, Length.Zero),
                5 => (-slant, -slant),
                6 => (Length.Zero, -straight),
                _ => (slant, -slant),
            };
            return new Point(from.X + x, from.Y + y);
        }
        // The first diamond lies to the right of the top.
        Point Inner(int k) => Step(center, k - 2);
        Point Tip(int k) => Step(Inner(k), k - 1);
        // Corners of the star between tips of an even and the next odd number; middles of its edges between the others.
        Point Outer(int k) =>
            (k % 8) switch
            {
                1 => new(side, Length.Zero),
                2 => new(side, half),
                3 => new(side, side),
                4 => new(half, side),
                5 => new(Length.Zero, side),
                6 => new(Length.Zero, half),
                7 => new(Length.Zero, Length.Zero),
                _ => new(half, Length.Zero),
            };
        var patches = ImmutableArray.CreateBuilder<UnitPatch>();
        for (int k = 0; k < 8; k++)
        {
            Add(rays == 8 ? k : k % rays, center, Inner(k), Tip(k), Inner(k + 1));
        }
        for (int k = 0; k < 8; k++)
        {
            // Beside inner point k lie the tips of diamonds k − 1 and k.
            Point before = Tip(k + 7),
                inner = Inner(k),
                after = Tip(k);
            if (split)
            {
                Add(rays, inner, before, Outer(k));
                Add(rays, inner, Outer(k), after);
            }
            else if (k % 2 == 1)
            {
                Add(rays, inner, before, Outer(k), after);
            }
            else
            {
                Add(rays, inner, before, after);
            }
        }
        return patches.ToImmutable();

        void Add(int role, params ReadOnlySpan<Point> corners) =>
            patches.Add(new UnitPatch(new Polygon([.. corners]), role));
    }
}
