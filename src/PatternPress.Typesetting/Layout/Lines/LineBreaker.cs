using System.Collections.Immutable;

namespace PatternPress.Typesetting.Layout.Lines;

/// <summary>
/// Chooses where lines end: as few lines as possible, and among those the most even ones (least sum of squared empty
/// space), so that no line is left with a single short word for want of looking ahead.
/// </summary>
static class LineBreaker
{
    // Squares of the empty share of a line, in millionths; a hyphen costs as much as a line a third empty.
    const long HyphenCost = 111_000;
    const long ShortLastLineCost = 60_000;

    /// <summary>The lines from an atom on.</summary>
    /// <param name="firstWidth">The width of the first line, which may be indented.</param>
    /// <param name="balanced">Whether the last line should be as long as the others.</param>
    public static ImmutableArray<Line> Break(
        ImmutableArray<Atom> atoms,
        int start,
        Points width,
        Points firstWidth,
        bool balanced
    )
    {
        var lines = ImmutableArray.CreateBuilder<Line>();
        var from = SkipSpaces(atoms, start);
        while (from < atoms.Length)
        {
            var end = from;
            while (end < atoms.Length && atoms[end].Kind != AtomKind.LineEnd)
            {
                end++;
            }

            BreakPart(
                atoms,
                from,
                end,
                width,
                lines.Count == 0 ? firstWidth : width,
                balanced,
                lines
            );
            from = end < atoms.Length ? SkipSpaces(atoms, end + 1) : end;
        }

        return lines.DrainToImmutable();
    }

    // One stretch without forced line ends, by dynamic programming over the places where a line may end.
    static void BreakPart(
        ImmutableArray<Atom> atoms,
        int from,
        int to,
        Points width,
        Points firstWidth,
        bool balanced,
        ImmutableArray<Line>.Builder lines
    )
    {
        if (from == to)
        {
            lines.Add(new(from, from, to + 1, Points.Zero, Hyphenated: false, Closes: true));
            return;
        }

        var breaks = PlacesToBreak(atoms, from, to);
        var best = new (int Lines, long Cost, int Previous, Line Line)[breaks.Count];
        for (var end = 1; end < breaks.Count; end++)
        {
            best[end] = (int.MaxValue, long.MaxValue, -1, default);
            for (var start = end - 1; start >= 0; start--)
            {
                if (best[start].Lines == int.MaxValue)
                {
                    continue;
                }

                var line = LineBetween(
                    atoms,
                    breaks[start],
                    breaks[end],
                    closes: end == breaks.Count - 1
                );
                var room = start == 0 ? firstWidth : width;
                var single = start == end - 1;
                if (line.Width > room && !single)
                {
                    break;
                }

                var count = best[start].Lines + 1;
                var cost = best[start].Cost + Cost(line, room, balanced, alone: start == 0);
                if (count < best[end].Lines || (count == best[end].Lines && cost < best[end].Cost))
                {
                    best[end] = (count, cost, start, line);
                }

                if (line.Width > room)
                {
                    break;
                }
            }
        }

        var chain = new Stack<Line>();
        for (var at = breaks.Count - 1; at > 0; at = best[at].Previous)
        {
            chain.Push(best[at].Line);
        }

        lines.AddRange(chain);
    }

    // Each place: the first atom after it.
    static List<int> PlacesToBreak(ImmutableArray<Atom> atoms, int from, int to)
    {
        var places = new List<int> { from };
        for (var i = from; i < to; i++)
        {
            var after =
                atoms[i].Kind == AtomKind.Space
                || (atoms[i].BreakAfter && i + 1 < to && atoms[i + 1].Kind != AtomKind.Space);
            if (after && i + 1 < to)
            {
                places.Add(i + 1);
            }
        }

        places.Add(to);
        return places;
    }

    static Line LineBetween(ImmutableArray<Atom> atoms, int from, int next, bool closes)
    {
        var end = next;
        while (end > from && atoms[end - 1].Kind == AtomKind.Space)
        {
            end--;
        }

        var width = Points.Zero;
        for (var i = from; i < end; i++)
        {
            width += atoms[i].Width;
        }

        var hyphenated = !closes && end == next && end > from && atoms[end - 1].Hyphen is not null;
        return new(
            from,
            end,
            next,
            hyphenated ? width + atoms[end - 1].HyphenWidth : width,
            hyphenated,
            closes
        );
    }

    static long Cost(Line line, Points room, bool balanced, bool alone)
    {
        if (room <= Points.Zero)
        {
            return 0;
        }

        var empty =
            Points.Max(Points.Zero, room - line.Width).Thousandths * 1000 / room.Thousandths;
        if (line.Closes && !balanced)
        {
            return !alone && empty > 850 ? ShortLastLineCost : 0;
        }

        return (empty * empty) + (line.Hyphenated ? HyphenCost : 0);
    }

    static int SkipSpaces(ImmutableArray<Atom> atoms, int at)
    {
        while (at < atoms.Length && atoms[at].Kind == AtomKind.Space)
        {
            at++;
        }

        return at;
    }
}
