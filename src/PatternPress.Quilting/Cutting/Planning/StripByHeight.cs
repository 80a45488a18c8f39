using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>A quick plan the way a cutter works by hand: heights from the tallest down, strips filled with the longest
/// pieces first, the end of the last strip of each height filled with shorter pieces. Keeps the rules of both styles.
/// </summary>
internal static class StripByHeight
{
    private sealed record Lie(CutPiece Piece, bool Turned, long Width, long Height)
    {
        public long Left { get; set; } = Piece.Count;
    }

    public static StripPlan Plan(CutProblem problem)
    {
        var lies = problem
            .Pieces.Where(piece => piece.Count > 0)
            .Select(piece => Lay(piece, problem.Width))
            .OrderByDescending(lie => lie.Height)
            .ThenByDescending(lie => lie.Width)
            .ThenBy(lie => lie.Piece.Id)
            .ToList();

        var strips = ImmutableArray.CreateBuilder<Strip>();
        foreach (var group in lies.GroupBy(lie => lie.Height))
        {
            var same = group.ToList();
            while (same.Any(lie => lie.Left > 0))
            {
                var segments = new List<StripSegment>();
                var copies = long.MaxValue;
                var room = Fill(same, problem.Width, segments, ref copies);
                var last = same.All(lie =>
                    lie.Left
                    == segments.Where(s => s.PieceId == lie.Piece.Id).Sum(s => s.Count) * copies
                );
                if (last && copies > 1 && lies.Any(Shorter))
                {
                    // The ends of strips cut alike stay free; only the last one is used up.
                    Take(same, segments, copies - 1);
                    strips.Add(new(group.Key, copies - 1, [.. segments]));
                    copies = 1;
                }
                bool Shorter(Lie lie) =>
                    lie.Height < group.Key && lie.Left > 0 && lie.Width <= room;
                if (last)
                    Fill(lies.Where(Shorter).ToList(), room, segments, ref copies);
                Take(lies, segments, copies);
                strips.Add(new(group.Key, copies, [.. segments]));
            }
        }

        return new(CutStyle.Plain, problem.Width, strips.ToImmutable(), AreaBound(problem), 0);
    }

    /// <summary>The direction in which all pieces of the kind, alone, take the least height.</summary>
    private static Lie Lay(CutPiece piece, long stock)
    {
        var upright = new Lie(piece, false, piece.Width, piece.Height);
        var turned = new Lie(piece, true, piece.Height, piece.Width);
        if (!piece.Turnable || turned.Width > stock || piece.Width == piece.Height)
            return upright;
        if (upright.Width > stock)
            return turned;
        long Alone(Lie lie)
        {
            var fits = stock / lie.Width;
            return (piece.Count + fits - 1) / fits * lie.Height;
        }
        return Alone(turned) < Alone(upright) ? turned : upright;
    }

    private static long Fill(
        IEnumerable<Lie> lies,
        long room,
        List<StripSegment> segments,
        ref long copies
    )
    {
        foreach (var lie in lies)
        {
            var count = Math.Min(lie.Left, room / lie.Width);
            if (count == 0)
                continue;
            segments.Add(new(lie.Piece.Id, count, lie.Turned, lie.Width, lie.Height));
            copies = Math.Min(copies, lie.Left / count);
            room -= count * lie.Width;
        }
        return room;
    }

    private static void Take(List<Lie> lies, List<StripSegment> segments, long copies)
    {
        foreach (var segment in segments)
            lies.Single(lie => lie.Piece.Id == segment.PieceId).Left -= segment.Count * copies;
    }

    private static long AreaBound(CutProblem problem)
    {
        Int128 area = 0;
        foreach (var piece in problem.Pieces)
            area += (Int128)piece.Width * piece.Height * piece.Count;
        return (long)((area + problem.Width - 1) / problem.Width);
    }
}
