using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>A list to be cut from panels, made ready for the search: equal kinds merged, and for strips across the fabric and
/// along it all ways in which pieces may lie, sorted tallest first, in the coarsest units that tell them apart.</summary>
internal sealed class PanelModel
{
    public required long[] Demand { get; init; }

    public required StripModel.Member[][] Members { get; init; }

    public required PanelSide[] Sides { get; init; }

    /// <summary>What all pieces cover takes so many panels at least.</summary>
    public required long AreaBound { get; init; }

    /// <param name="problem">With at least one piece, and without faults.</param>
    public static PanelModel Of(PanelProblem problem)
    {
        var kinds = problem
            .Pieces.Where(piece => piece.Count > 0)
            .Select(piece =>
            {
                var swap = piece.Turnable && !piece.AlongStrip && piece.Width < piece.Height;
                return (
                    Piece: piece with
                    {
                        Id = 0,
                        Count = 0,
                        Width = swap ? piece.Height : piece.Width,
                        Height = swap ? piece.Width : piece.Height,
                    },
                    Member: new StripModel.Member(piece, swap)
                );
            })
            .GroupBy(kind => kind.Piece)
            .OrderByDescending(group => group.Key.Height)
            .ThenByDescending(group => group.Key.Width)
            .ThenBy(group => group.Key.Turnable)
            .ThenBy(group => group.Key.AlongStrip)
            .ToArray();
        var sides = new List<PanelSide>();
        foreach (var up in (bool[])[false, true])
        {
            // A square panel whose pieces may all be turned is the same either way.
            if (
                up
                && problem.Width == problem.Height
                && kinds.All(kind => kind.Key.Turnable || kind.Key.Width == kind.Key.Height)
            )
                continue;
            var lies = new List<(int Kind, long Width, long Height)>();
            for (var kind = 0; kind < kinds.Length; kind++)
                foreach (var (width, height) in problem.Lies(kinds[kind].Key, up))
                    lies.Add((kind, width, height));
            if (lies.Count > 0)
                sides.Add(PanelSide.Of(up, problem.Room(up), problem.Extent(up), lies));
        }
        var area = WideSum.Zero;
        foreach (var group in kinds)
            area += WideSum.Product(
                group.Key.Width * group.Key.Height,
                group.Sum(kind => kind.Member.Piece.Count)
            );
        return new()
        {
            Demand = [.. kinds.Select(group => group.Sum(kind => kind.Member.Piece.Count))],
            Members = [.. kinds.Select(group => group.Select(kind => kind.Member).ToArray())],
            Sides = [.. sides],
            AreaBound = area.Over(WideSum.Of(problem.Width * problem.Height)),
        };
    }
}

/// <summary>Panels whose strips run one way.</summary>
/// <param name="Up">Along the fabric rather than across it.</param>
/// <param name="Room">Length of a strip, in units of <paramref name="RoomUnit"/>.</param>
/// <param name="Extent">What strips may be high together, in units of <paramref name="ExtentUnit"/>.</param>
/// <param name="Lies">Tallest first.</param>
/// <param name="Heights">Distinct heights of strips, tallest first.</param>
internal sealed record PanelSide(
    bool Up,
    int Room,
    int Extent,
    long RoomUnit,
    long ExtentUnit,
    PanelLie[] Lies,
    int[] Heights
)
{
    /// <summary>The first of the lies that go into a strip of a height.</summary>
    public int First(int height) => Array.FindIndex(Lies, lie => lie.Height <= Heights[height]);

    public static PanelSide Of(
        bool up,
        long room,
        long extent,
        List<(int Kind, long Width, long Height)> lies
    )
    {
        long roomUnit = 0,
            extentUnit = 0;
        foreach (var lie in lies)
        {
            roomUnit = Rational.GreatestCommonDivisor(roomUnit, lie.Width);
            extentUnit = Rational.GreatestCommonDivisor(extentUnit, lie.Height);
        }
        var sorted = lies.OrderByDescending(lie => lie.Height)
            .ThenByDescending(lie => lie.Width)
            .ThenBy(lie => lie.Kind)
            .Select(lie => new PanelLie(
                lie.Kind,
                (int)(lie.Width / roomUnit),
                (int)(lie.Height / extentUnit)
            ))
            .ToArray();
        return new(
            up,
            (int)(room / roomUnit),
            (int)(extent / extentUnit),
            roomUnit,
            extentUnit,
            sorted,
            [.. sorted.Select(lie => lie.Height).Distinct()]
        );
    }
}

/// <summary>One way in which the pieces of a kind may lie in a strip of a panel.</summary>
internal sealed record PanelLie(int Kind, int Width, int Height);

/// <summary>How one strip of a panel is cut.</summary>
/// <param name="Side">Index of the side.</param>
/// <param name="Height">Index of its height among the side's.</param>
/// <param name="Copies">Pieces of each lie of the side.</param>
internal sealed record PanelStrip(int Side, int Height, int[] Copies)
{
    public bool Equals(PanelStrip? other) =>
        other is not null
        && Side == other.Side
        && Height == other.Height
        && Copies.AsSpan().SequenceEqual(other.Copies);

    /// <summary>Written out rather than left to <see cref="HashCode"/>, whose seed differs from run to run.</summary>
    public override int GetHashCode()
    {
        var hash = Side * 31 + Height;
        foreach (var count in Copies)
            hash = unchecked(hash * 31 + count);
        return hash;
    }
}

/// <summary>So many panels cut alike.</summary>
internal sealed record CutPanel(int Side, long Times, List<PanelStrip> Strips);
