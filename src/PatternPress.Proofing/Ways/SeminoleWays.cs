using System.Collections.Immutable;
using System.Globalization;
using PatternPress.Proofing.Shapes;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Proofing.Ways;

/// <summary>Bands of segments cut from sets of strips at 45° and joined leaning to either side by turns.</summary>
internal static class SeminoleWays
{
    public static UnitWay[] All { get; } =
    [new("seminole-angled-segments", "seminole", Plan) { Oversize = true }];

    private static WayPlan? Plan(UnitOrder order)
    {
        string[] words = order.Variant.Split(' ', '/');
        if (
            words.Length != 3
            || !int.TryParse(words[0], CultureInfo.InvariantCulture, out int segments)
            || !long.TryParse(words[1], CultureInfo.InvariantCulture, out long numerator)
            || !long.TryParse(words[2], CultureInfo.InvariantCulture, out long denominator)
            || segments is < 2 or > 1000
            || segments % 2 != 0
            || numerator <= 0
            || denominator <= 0
            || order.Roles < 2
        )
        {
            return null;
        }
        int stripes = order.Roles - 1;
        Length stripe = Length.FromInches(new Rational(numerator, denominator)),
            column = order.Width / segments;
        // Along an upright side a stripe at 45° is √2 times as long as it is wide. What the zigzag, a column high, and the
        // stripes leave is shared out above and below.
        Length rise = stripe * Exact.SquareRootOfTwo;
        Length spare = order.Height - column - (rise * stripes);
        if (spare.Sign <= 0)
        {
            return null;
        }
        Length above = spare / 2;
        return new WayPlan(
            [
                .. Enumerable
                    .Range(0, stripes)
                    .Select(role => new NeededPiece(
                        "strip",
                        role,
                        segments,
                        new(Exact.Zero, order.StripLength),
                        new(SeamLoss.Straight, stripe),
                        WholeStrip: true
                    )),
                // Its far corner: above the zigzag's lowest place at the outer side of the seam allowance, a column and two
                // seams further along, all seen across the strip, which is shorter by √2; and one seam to the stripe.
                new NeededPiece(
                    "edge strip",
                    stripes,
                    2L * segments,
                    new(Exact.Zero, order.StripLength),
                    new(new Exact(1, 1), (above + column) * SeamLoss.SideOfDiagonal),
                    WholeStrip: true
                ),
            ],
            0,
            Picture(order, segments, stripes, column, rise, above)
        )
        {
            Sets = [new NeededSet([stripes, .. Enumerable.Range(0, stripes), stripes], segments)],
            Segment = new PieceSide(SeamLoss.Straight, column),
            Trims = true,
            SegmentsFrom = (heights, segment) => Segments(heights, segment, stripes, order),
        };
    }

    // Folded in half, a set is cut through two layers; the first cut leaves a triangle as long as the set is high.
    private static long Segments(
        IReadOnlyDictionary<int, Length> heights,
        Length segment,
        int stripes,
        UnitOrder order
    )
    {
        Length high = heights.GetValueOrDefault(stripes) * 2 - order.Seam * 2;
        for (int role = 0; role < stripes; role++)
        {
            high += heights.GetValueOrDefault(role) - (order.Seam * 2);
        }
        Length reach = high,
            each = segment * Exact.SquareRootOfTwo;
        long pairs = 0;
        while (each.Sign > 0 && pairs < 100_000 && reach + each <= order.StripLength / 2)
        {
            reach += each;
            pairs++;
        }
        return pairs * 2;
    }

    private static ImmutableArray<UnitPatch> Picture(
        UnitOrder order,
        int segments,
        int stripes,
        Length column,
        Length rise,
        Length above
    )
    {
        var patches = ImmutableArray.CreateBuilder<UnitPatch>();
        for (int k = 0; k < segments; k++)
        {
            Length left = column * k,
                right = left + column;
            (Length high, Length low) = (above, above + column);
            (Length from, Length to) = k % 2 == 0 ? (high, low) : (low, high);
            Length[] starts =
            [
                Length.Zero,
                .. Enumerable.Range(0, stripes + 1).Select(i => rise * i),
            ];
            for (int i = 0; i <= stripes + 1; i++)
            {
                Point upperLeft = new(left, i == 0 ? Length.Zero : from + starts[i]),
                    upperRight = new(right, i == 0 ? Length.Zero : to + starts[i]),
                    lowerRight = new(right, i > stripes ? order.Height : to + starts[i + 1]),
                    lowerLeft = new(left, i > stripes ? order.Height : from + starts[i + 1]);
                patches.Add(
                    new UnitPatch(
                        new Polygon([upperLeft, upperRight, lowerRight, lowerLeft]),
                        i == 0 || i > stripes ? stripes : i - 1
                    )
                );
            }
        }
        return patches.ToImmutable();
    }
}
