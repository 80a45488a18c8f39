using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Resolving;

/// <summary>
/// In which order rectangles that fill a rectangle are sewn together: the units of a block, the blocks of a quilt. Into rows
/// (or columns), a row's inner groups first. Every seam runs straight from edge to edge of what it joins.
/// </summary>
public abstract record SewingOrder
{
    private SewingOrder() { }

    /// <summary>A rectangle, by its index.</summary>
    public sealed record Unit(int Index) : SewingOrder;

    /// <summary>Parts that are sewn side by side.</summary>
    /// <param name="Level">Whether the parts lie one below the other, so that the seams run level.</param>
    public sealed record Group(bool Level, ImmutableArray<SewingOrder> Parts) : SewingOrder;

    /// <summary>Parts that only go together with partial seams, around each other.</summary>
    /// <param name="Middle">The part that the others go round; null where there is not just one.</param>
    /// <param name="Parts">The others in the order they are sewn on: the upper one first, the next on the side where it ends
    /// flush with the middle. The seam of the first is closed last.</param>
    public sealed record Around(SewingOrder? Middle, ImmutableArray<SewingOrder> Parts)
        : SewingOrder;

    /// <summary>A block inside a block, sewn before the parts beside it.</summary>
    public sealed record Inner(InnerBlock Block, SewingOrder Parts) : SewingOrder;

    /// <summary>Works out the order for a block; blocks inside it are sewn first.</summary>
    public static SewingOrder Of(Block block) =>
        Within(block, null, [.. Enumerable.Range(0, block.Units.Length)]);

    // The units of a block or of one inside it, whose inner blocks are each taken as one rectangle.
    private static SewingOrder Within(Block block, InnerBlock? around, List<int> units)
    {
        var places = ImmutableArray.CreateBuilder<Rect>();
        var parts = new List<SewingOrder>();
        var left = new List<int>(units);
        foreach (InnerBlock inner in block.Design.Inner)
        {
            List<int> inside =
            [
                .. left.Where(i =>
                {
                    UnitRegion region = block.Units[i].Region;
                    return inner.Holds(region.Column, region.Row, region.Columns, region.Rows);
                }),
            ];
            // The outermost come first in the list and take those in them along.
            if (
                inside.Count == 0
                || inner == around
                || (
                    around is not null
                    && !around.Holds(inner.Column, inner.Row, inner.Columns, inner.Rows)
                )
            )
            {
                continue;
            }
            left.RemoveAll(inside.Contains);
            Rect[] rects = [.. inside.Select(i => block.Units[i].Place)];
            Length x = rects.Min(r => r.X),
                y = rects.Min(r => r.Y);
            places.Add(new Rect(x, y, rects.Max(r => r.Right) - x, rects.Max(r => r.Bottom) - y));
            parts.Add(new Inner(inner, Within(block, inner, inside)));
        }
        places.AddRange(left.Select(i => block.Units[i].Place));
        parts.AddRange(left.Select(i => new Unit(i)));
        return With(Of(places.ToImmutable()), parts);
    }

    // The same order with other parts for its units.
    private static SewingOrder With(SewingOrder order, List<SewingOrder> parts) =>
        order switch
        {
            Unit unit => parts[unit.Index],
            Group group => group with { Parts = [.. group.Parts.Select(p => With(p, parts))] },
            Around around => new Around(
                around.Middle is null ? null : With(around.Middle, parts),
                [.. around.Parts.Select(p => With(p, parts))]
            ),
            _ => order,
        };

    /// <summary>Works out the order for rectangles that fill a rectangle; rows rather than columns where both can be.</summary>
    public static SewingOrder Of(ImmutableArray<Rect> places) =>
        new Splitting(places).Split([.. Enumerable.Range(0, places.Length)], level: true);

    /// <summary>Whether all parts can be sewn as said: nothing goes around no middle.</summary>
    public bool IsComplete =>
        this switch
        {
            Group group => group.Parts.All(p => p.IsComplete),
            Around around => around.Middle is { IsComplete: true }
                && around.Parts.All(p => p.IsComplete),
            Inner inner => inner.Parts.IsComplete,
            _ => true,
        };

    /// <summary>The rows of the block as they are numbered in its diagram: the outermost parts.</summary>
    public ImmutableArray<SewingOrder> Rows() =>
        this switch
        {
            Group group => group.Parts,
            Around around => around.Parts,
            _ => [this],
        };

    /// <summary>Indices of all units of this part, in the order they are sewn.</summary>
    public IEnumerable<int> Units() =>
        this switch
        {
            Unit unit => [unit.Index],
            Group group => group.Parts.SelectMany(p => p.Units()),
            Inner inner => inner.Parts.Units(),
            Around around => (around.Middle?.Units() ?? []).Concat(
                around.Parts.SelectMany(p => p.Units())
            ),
            _ => [],
        };

    /// <summary>Works with the numbers of grid lines instead of lengths: only which edge lies before which matters.</summary>
    private sealed class Splitting
    {
        /// <summary>More parts around each other than these are not looked into for partial seams.</summary>
        private const int MostAround = 300;

        private readonly (int Left, int Top, int Right, int Bottom)[] _places;

        public Splitting(ImmutableArray<Rect> places)
        {
            Dictionary<Length, int> x = Lines(places.SelectMany(p => new[] { p.X, p.Right })),
                y = Lines(places.SelectMany(p => new[] { p.Y, p.Bottom }));
            _places = [.. places.Select(p => (x[p.X], y[p.Y], x[p.Right], y[p.Bottom]))];
        }

        private static Dictionary<Length, int> Lines(IEnumerable<Length> edges)
        {
            List<Length> sorted = [.. edges.Distinct()];
            sorted.Sort();
            var lines = new Dictionary<Length, int>(sorted.Count);
            foreach (Length edge in sorted)
            {
                lines.Add(edge, lines.Count);
            }
            return lines;
        }

        public SewingOrder Split(List<int> units, bool level)
        {
            if (units.Count == 1)
            {
                return new Unit(units[0]);
            }
            foreach (bool way in new[] { level, !level })
            {
                List<List<int>> parts = CutApart(units, way);
                if (parts.Count > 1)
                {
                    return new Group(way, [.. parts.Select(p => Split(p, !way))]);
                }
            }
            return InTurn(units)
                ?? new Around(null, [.. units.Select(index => (SewingOrder)new Unit(index))]);
        }

        // Sweeps across and starts a new part wherever no unit reaches over.
        private List<List<int>> CutApart(List<int> units, bool level)
        {
            var sorted = new List<int>(units);
            sorted.Sort(
                (a, b) =>
                {
                    (int left, int top, _, _) = _places[a];
                    (int otherLeft, int otherTop, _, _) = _places[b];
                    int across = left.CompareTo(otherLeft),
                        down = top.CompareTo(otherTop);
                    return level ? (down != 0 ? down : across) : (across != 0 ? across : down);
                }
            );
            var parts = new List<List<int>>();
            int reach = 0;
            foreach (int index in sorted)
            {
                (int left, int top, int right, int bottom) = _places[index];
                int start = level ? top : left,
                    end = level ? bottom : right;
                if (parts.Count == 0 || start >= reach)
                {
                    parts.Add([]);
                    reach = end;
                }
                parts[^1].Add(index);
                reach = Math.Max(reach, end);
            }
            return parts;
        }

        // Four parts around a middle, each of one unit or several: each part is sewn to the middle and to the end of the one
        // before. Either turn is tried for each line that the upper part may end at.
        private Around? InTurn(List<int> units)
        {
            if (units.Count is < 5 or > MostAround)
            {
                return null;
            }
            int left = units.Min(u => _places[u].Left),
                top = units.Min(u => _places[u].Top),
                right = units.Max(u => _places[u].Right),
                bottom = units.Max(u => _places[u].Bottom);
            int[] across =
                [.. units.Select(u => _places[u].Right).Distinct().Where(x => x < right)],
                down = [.. units.Select(u => _places[u].Bottom).Distinct().Where(y => y < bottom)];
            Array.Sort(across);
            Array.Sort(down);
            foreach (int upper in down)
            {
                foreach (int end in across)
                {
                    // Clockwise the upper part starts at the left edge and ends with the middle.
                    if (
                        Part(units, left, top, end, upper) is { } first
                        && Clockwise(first, upper, end) is { } clockwise
                    )
                    {
                        return clockwise;
                    }
                    if (
                        Part(units, end, top, right, upper) is { } other
                        && Counterclockwise(other, upper, end) is { } counterclockwise
                    )
                    {
                        return counterclockwise;
                    }
                }
            }
            return null;

            Around? Clockwise(List<int> first, int upper, int end)
            {
                foreach (int lower in down.Where(y => y > upper))
                {
                    if (Part(units, end, top, right, lower) is not { } second)
                    {
                        continue;
                    }
                    foreach (int start in across.Where(x => x < end))
                    {
                        if (
                            Part(units, start, lower, right, bottom) is { } third
                            && Part(units, left, upper, start, bottom) is { } fourth
                            && Part(units, start, upper, end, lower) is { } middle
                        )
                        {
                            return Turn(middle, first, second, third, fourth);
                        }
                    }
                }
                return null;
            }

            Around? Counterclockwise(List<int> first, int upper, int start)
            {
                foreach (int lower in down.Where(y => y > upper))
                {
                    if (Part(units, left, top, start, lower) is not { } second)
                    {
                        continue;
                    }
                    foreach (int end in across.Where(x => x > start))
                    {
                        if (
                            Part(units, left, lower, end, bottom) is { } third
                            && Part(units, end, upper, right, bottom) is { } fourth
                            && Part(units, start, upper, end, lower) is { } middle
                        )
                        {
                            return Turn(middle, first, second, third, fourth);
                        }
                    }
                }
                return null;
            }
        }

        // Upper and lower part are divided upright first, as rows of one; the others level.
        private Around Turn(List<int> middle, params ImmutableArray<List<int>> parts) =>
            new(
                Split(middle, level: true),
                [.. parts.Select((part, i) => Split(part, level: i % 2 == 1))]
            );

        // The units within a rectangle; null if none are or one reaches across its edge.
        private List<int>? Part(List<int> units, int left, int top, int right, int bottom)
        {
            var part = new List<int>();
            foreach (int index in units)
            {
                (int x, int y, int x2, int y2) = _places[index];
                if (x >= right || x2 <= left || y >= bottom || y2 <= top)
                {
                    continue;
                }
                if (x < left || x2 > right || y < top || y2 > bottom)
                {
                    return null;
                }
                part.Add(index);
            }
            return part.Count == 0 ? null : part;
        }
    }
}
