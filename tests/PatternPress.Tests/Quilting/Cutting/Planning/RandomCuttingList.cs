using System.Collections.Immutable;
using PatternPress.Quilting.Cutting.Planning;

namespace PatternPress.Tests.Quilting.Cutting.Planning;

/// <summary>Cutting lists drawn from a seed, of up to twelve kinds.</summary>
internal static class RandomCuttingList
{
    /// <summary>As quilts have them: units of a block's grid with the seam allowances of squares (1/2 in), half-square
    /// triangles (7/8 in) and quarter-square triangles (1 1/4 in), setting squares, sashing and border lengths; from 40 to
    /// 44 in fabric in eighths of an inch, or from 100 to 112 cm fabric in half centimetres.</summary>
    public static CutProblem Quilt(int seed)
    {
        var random = new Random(seed);
        var metric = random.Next(5) == 0;
        var width = metric ? random.Next(200, 225) : 8 * random.Next(40, 45);
        // Eighths of an inch, or half centimetres: the finished grid of the block and the allowances.
        var grid = metric ? random.Next(4, 17) : 4 * random.Next(2, 13);
        int[] allowance = metric ? [3, 5, 7] : [4, 7, 10];
        var blocks = random.Next(4, 100);
        var across = random.Next(3, 7);

        var kinds = new Dictionary<(int, int), (long Count, bool Turnable)>();
        var wanted = random.Next(1, 13);
        // No more of one fabric than 15 yards.
        var room = (long)width * (metric ? 2700 : 8 * 540);
        for (var tries = 0; kinds.Count < wanted && tries < 200; tries++)
        {
            var seam = allowance[0];
            var (w, h, count) = random.Next(12) switch
            {
                < 4 => Square(grid * random.Next(1, 4) + seam, blocks * random.Next(1, 9)),
                < 6 => Square(
                    grid * random.Next(1, 3) + allowance[random.Next(1, 3)],
                    blocks * random.Next(1, 5)
                ),
                < 9 => (
                    grid * random.Next(2, 5) + seam,
                    grid * random.Next(1, 3) + seam,
                    blocks * random.Next(1, 5)
                ),
                < 10 => (grid * across + seam, Math.Max(4, grid / 2) + seam, blocks * 2),
                < 11 => Square(grid * across + seam, Math.Max(1, blocks / 2)),
                _ => (random.Next(width * 2 / 3, width + 1), grid + seam, random.Next(2, 9)),
            };
            var area = (long)w * h * count;
            if (w > width || h > width || area > room)
                continue;
            if (kinds.TryAdd((w, h), (count, random.Next(3) > 0)))
                room -= area;
        }
        return new(
            width,
            [
                .. kinds.Select(
                    (kind, id) =>
                        new CutPiece(
                            id + 1,
                            kind.Key.Item1,
                            kind.Key.Item2,
                            kind.Value.Count,
                            kind.Value.Turnable
                        )
                ),
            ]
        );

        static (int, int, int) Square(int side, int count) => (side, side, count);
    }

    /// <summary>Up to four kinds in half inches, of which no more than a few strips are cut.</summary>
    public static CutProblem Small(int seed)
    {
        var random = new Random(seed);
        var pieces = ImmutableArray.CreateBuilder<CutPiece>();
        for (var id = random.Next(1, 5); id >= 1; id--)
            pieces.Add(
                new(
                    id,
                    random.Next(3, 30),
                    random.Next(3, 20),
                    random.Next(1, 11),
                    random.Next(2) == 0
                )
            );
        return new(2 * random.Next(40, 45), pieces.ToImmutable());
    }

    /// <summary>Up to twelve kinds in whole inches: coarse enough for the reference to settle thousands.</summary>
    public static CutProblem WholeInches(int seed)
    {
        var random = new Random(seed);
        var pieces = ImmutableArray.CreateBuilder<CutPiece>();
        for (var id = random.Next(1, 13); id >= 1; id--)
            pieces.Add(
                new(
                    id,
                    random.Next(2, 21),
                    random.Next(2, 13),
                    random.Next(1, 13),
                    random.Next(2) == 0
                )
            );
        return new(random.Next(40, 45), pieces.ToImmutable());
    }

    /// <summary>Any sizes and counts at all: no two heights need have anything to do with each other.</summary>
    public static CutProblem Wild(int seed)
    {
        var random = new Random(seed);
        var metric = random.Next(4) == 0;
        // Half of the inch lists keep to quarter inches, as most patterns do.
        var step = metric || random.Next(2) == 0 ? 1 : 2;
        var unit = metric ? 1 : 8;
        var width = metric ? random.Next(200, 225) : 8 * random.Next(40, 45);
        var kinds = random.Next(1, 13);
        var busiest = random.Next(3) switch
        {
            0 => 12,
            1 => 60,
            _ => 400,
        };
        int Size(int least, int most) =>
            metric
                ? random.Next(least * 5, most * 5)
                : random.Next(least * unit, most * unit) / step * step;

        var pieces = ImmutableArray.CreateBuilder<CutPiece>();
        for (var id = 1; id <= kinds; id++)
        {
            var (w, h) = random.Next(10) switch
            {
                < 4 => Square(Size(1, 7)),
                < 8 => (Size(1, 13), Size(1, 7)),
                < 9 => (Size(12, 30), Size(1, 4)),
                _ => Square(Size(6, 19)),
            };
            var large = w * h > 60 * unit * unit;
            pieces.Add(
                new(id, w, h, random.Next(1, (large ? 8 : busiest) + 1), random.Next(2) == 0)
            );
        }
        return new(width, pieces.ToImmutable());

        static (int, int) Square(int side) => (side, side);
    }
}
