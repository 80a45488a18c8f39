using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>A cutting list made ready for the search: equal kinds merged, placements sorted tallest first, widths in the
/// coarsest unit that tells all strips apart, and the families of strips the style allows.</summary>
internal sealed class StripModel
{
    /// <summary>Pieces of a merged kind: which of the caller's kinds, and whether that one counts as turned when the
    /// merged kind lies upright.</summary>
    public sealed record Member(CutPiece Piece, bool Swapped);

    public required long[] Demand { get; init; }

    public required Member[][] Members { get; init; }

    public required Placement[] Placements { get; init; }

    public required PlacementRun[] Runs { get; init; }

    public required StripFamily[] Families { get; init; }

    /// <summary>Distinct strip heights, tallest first.</summary>
    public required long[] Heights { get; init; }

    public required Remainder[] Remainders { get; init; }

    /// <summary>The whole list, nothing fixed yet.</summary>
    public Subproblem Everything =>
        new(
            Demand,
            [
                .. Families.SelectWhere(
                    family => family.Cap != Limit.None,
                    family => new Limit(new Tally.Mixed(family.Height), 0, family.Cap)
                ),
                .. Remainders.Select(
                    (remainder, index) =>
                        new Limit(new Tally.Taken(index, Heights[0]), 0, remainder.Length)
                ),
            ],
            0
        );

    /// <summary>What all pieces cover, laid out over the whole width: no plan is shorter. Grid units.</summary>
    private long AreaBound
    {
        get
        {
            var area = WideSum.Zero;
            var seen = new bool[Demand.Length];
            foreach (var placement in Placements)
            {
                if (!seen[placement.Kind])
                    area += WideSum.Product(
                        placement.Width * placement.Height,
                        Demand[placement.Kind]
                    );
                seen[placement.Kind] = true;
            }
            foreach (var remainder in Remainders)
                area -= WideSum.Product(remainder.Width, remainder.Length);
            return area.Sign > 0 ? area.DividedUp(Runs.Max(run => run.Width)) : 0;
        }
    }

    /// <summary>No plan is shorter: the better of what the pieces cover and of <see cref="LevelBound"/>. Grid units.</summary>
    public long QuickBound => Math.Max(AreaBound, Level);

    private long Level { get; init; }

    /// <summary>How many strips are at least as tall as this one: the families that count.</summary>
    public bool IsAtLeast(int family, int height) =>
        Families[family].Cost > 0 && Families[family].Height >= Heights[height];

    /// <param name="problem">With at least one piece, and without faults.</param>
    public static StripModel Of(CutProblem problem, CutStyle style)
    {
        var kinds = problem
            .Pieces.Where(piece => piece.Count > 0)
            .Select(piece =>
            {
                var swap = piece.Turnable && piece.Width < piece.Height;
                return (
                    Width: swap ? piece.Height : piece.Width,
                    Height: swap ? piece.Width : piece.Height,
                    Turnable: piece.Turnable && piece.Width != piece.Height,
                    Member: new Member(piece, swap)
                );
            })
            .GroupBy(kind => (kind.Width, kind.Height, kind.Turnable))
            .ToArray();
        Array.Sort(
            kinds,
            (a, b) =>
                a.Key.Height != b.Key.Height ? b.Key.Height.CompareTo(a.Key.Height)
                : a.Key.Width != b.Key.Width ? b.Key.Width.CompareTo(a.Key.Width)
                : a.Key.Turnable.CompareTo(b.Key.Turnable)
        );

        var lies = kinds
            .SelectMany(
                (group, kind) =>
                {
                    var (width, height, turnable) = group.Key;
                    return new[]
                    {
                        (Kind: kind, Turned: false, Width: width, Height: height),
                        (Kind: kind, Turned: true, Width: height, Height: width),
                    }.Where(lie => lie.Width <= problem.Width && (turnable || !lie.Turned));
                }
            )
            .ToArray();
        Array.Sort(
            lies,
            (a, b) =>
                a.Height != b.Height ? b.Height.CompareTo(a.Height)
                : a.Width != b.Width ? b.Width.CompareTo(a.Width)
                : a.Kind.CompareTo(b.Kind)
        );

        var unit = lies.Aggregate(
            0L,
            (unit, lie) => Rational.GreatestCommonDivisor(unit, lie.Width)
        );

        var placements = lies.Select(lie => new Placement(
                lie.Kind,
                lie.Turned,
                (int)(lie.Width / unit),
                lie.Height
            ))
            .ToArray();
        var width = (int)(problem.Width / unit);

        // Thrifty: one run of everything, a family per height. Plain: the same families, but of the strips at least so tall
        // no more than there are heights of flat pieces, and beside them for each height an unlimited family whose run ends with that
        // height.
        var heights = placements.Select(placement => placement.Height).Distinct().ToArray();
        // Heights of kinds that lie as flat as they can: a strip that only an upright piece needs is none of them.
        var flat = placements
            .GroupBy(placement => placement.Kind)
            .Select(kind => kind.Min(placement => placement.Height))
            .Distinct()
            .ToArray();
        var runs = new List<PlacementRun> { new(0, placements.Length, width) };
        var families = new List<StripFamily>();
        foreach (var height in heights)
        {
            var first = Array.FindIndex(placements, placement => placement.Height == height);
            var end = Array.FindLastIndex(placements, placement => placement.Height == height) + 1;
            if (style == CutStyle.Plain && end < placements.Length)
            {
                families.Add(new(runs.Count, first, height, height, long.MaxValue));
                runs.Add(new(first, end, width));
                families.Add(
                    new(0, first, height, height, Math.Max(1, flat.Count(other => other >= height)))
                );
            }
            else
                families.Add(new(0, first, height, height, long.MaxValue));
        }

        // Strips of remainders: of each height that goes in, mixed only where strips of the fabric may be.
        for (var from = 0; from < problem.Remainders.Length; from++)
            foreach (var height in heights)
            {
                if (height > problem.Remainders[from].Length)
                    continue;
                var first = Array.FindIndex(placements, placement => placement.Height == height);
                var end =
                    style == CutStyle.Plain
                        ? Array.FindLastIndex(placements, placement => placement.Height == height)
                            + 1
                        : placements.Length;
                families.Add(new(runs.Count, first, height, 0, long.MaxValue) { From = from });
                runs.Add(new(first, end, (int)(problem.Remainders[from].Width / unit)));
            }

        return new()
        {
            Remainders =
            [
                .. problem.Remainders.Select(remainder =>
                    remainder with
                    {
                        Width = remainder.Width / unit,
                    }
                ),
            ],
            Demand = [.. kinds.Select(group => group.Sum(kind => kind.Member.Piece.Count))],
            Members = [.. kinds.Select(group => group.Select(kind => kind.Member).ToArray())],
            Placements = placements,
            Runs = [.. runs],
            Families = [.. families],
            Heights = heights,
            Level = LevelBound.Of(problem),
        };
    }
}
