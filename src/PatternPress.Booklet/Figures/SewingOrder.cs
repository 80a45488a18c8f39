using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// In which order a block's units are sewn together: units into rows (or columns), rows into the block, a row's
/// inner groups first. Every seam runs straight from edge to edge of what it joins.
/// </summary>
public abstract record SewingOrder
{
    private SewingOrder() { }

    /// <summary>A unit, by its index in the block.</summary>
    public sealed record Unit(int Index) : SewingOrder;

    /// <summary>Parts that are sewn side by side.</summary>
    /// <param name="Level">Whether the parts lie one below the other, so that the seams run level.</param>
    public sealed record Group(bool Level, ImmutableArray<SewingOrder> Parts) : SewingOrder;

    /// <summary>Parts that only go together with partial seams, around each other.</summary>
    /// <param name="Middle">The part that the others go round; null where there is not just one.</param>
    /// <param name="Parts">The others in the order they are sewn on: the seam of the first is closed last.</param>
    public sealed record Around(SewingOrder? Middle, ImmutableArray<SewingOrder> Parts)
        : SewingOrder;

    /// <summary>Works out the order for a block.</summary>
    public static SewingOrder Of(Block block) =>
        Split([.. block.Units.Select((u, i) => (i, u.Place))], level: true);

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
            Around around => (around.Middle?.Units() ?? []).Concat(
                around.Parts.SelectMany(p => p.Units())
            ),
            _ => [],
        };

    private static SewingOrder Split(List<(int Index, Rect Place)> units, bool level)
    {
        if (units.Count == 1)
        {
            return new Unit(units[0].Index);
        }
        foreach (bool way in new[] { level, !level })
        {
            List<List<(int, Rect)>> parts = CutApart(units, way);
            if (parts.Count > 1)
            {
                return new Group(way, [.. parts.Select(p => Split(p, !way))]);
            }
        }
        return InTurn(units);
    }

    // Four units around one: each is sewn to the middle and to the end of the one before. The first is the upper one; the
    // next stands on the side where the first ends flush with the middle.
    private static Around InTurn(List<(int Index, Rect Place)> units)
    {
        var places = units.ToDictionary(u => u.Index, u => u.Place);
        foreach ((int middle, Rect place) in units)
        {
            int? Beside(Func<Rect, bool> touches) =>
                units
                    .Where(u => u.Index != middle && touches(u.Place))
                    .Select(u => (int?)u.Index)
                    .FirstOrDefault();

            int? top = Beside(r => r.Bottom == place.Y && Meet(r.X, r.Right, place.X, place.Right)),
                right = Beside(r =>
                    r.X == place.Right && Meet(r.Y, r.Bottom, place.Y, place.Bottom)
                ),
                bottom = Beside(r =>
                    r.Y == place.Bottom && Meet(r.X, r.Right, place.X, place.Right)
                ),
                left = Beside(r =>
                    r.Right == place.X && Meet(r.Y, r.Bottom, place.Y, place.Bottom)
                );
            if (
                units.Count == 5
                && top is { } above
                && right is { } after
                && bottom is { } below
                && left is { } before
            )
            {
                int[] turn =
                    places[above].Right == place.Right
                        ? [above, after, below, before]
                        : [above, before, below, after];
                return new Around(new Unit(middle), [.. turn.Select(i => new Unit(i))]);
            }
        }
        return new Around(null, [.. units.Select(u => new Unit(u.Index))]);
    }

    private static bool Meet(Length from, Length to, Length otherFrom, Length otherTo) =>
        from < otherTo && otherFrom < to;

    // Sweeps across and starts a new part wherever no unit reaches over.
    private static List<List<(int, Rect)>> CutApart(List<(int Index, Rect Place)> units, bool level)
    {
        var parts = new List<List<(int, Rect)>>();
        Length reach = default;
        foreach (
            (int index, Rect place) in units
                .OrderBy(u => level ? u.Place.Y : u.Place.X)
                .ThenBy(u => level ? u.Place.X : u.Place.Y)
        )
        {
            Length start = level ? place.Y : place.X,
                end = level ? place.Bottom : place.Right;
            if (parts.Count == 0 || start >= reach)
            {
                parts.Add([]);
                reach = end;
            }
            parts[^1].Add((index, place));
            reach = Length.Max(reach, end);
        }
        return parts;
    }
}
