using System.Collections.Immutable;
using PatternPress.Proofing.Shapes;
using PatternPress.Quilting.Measures;

namespace PatternPress.Proofing.Ways;

/// <summary>Units of equal cells in rows: four-patch, nine-patch, checkerboard.</summary>
internal static class GridWays
{
    public static UnitWay[] All { get; } =
    [
        new("four-patch-pieced-singly", "four-patch", Singly),
        new("four-patch-strip-sets", "four-patch", Strips),
        new("nine-patch-pieced-singly", "nine-patch", Singly),
        new("nine-patch-strip-sets", "nine-patch", Strips),
        new("checkerboard-pieced-singly", "checkerboard", Singly),
        new("checkerboard-strip-sets", "checkerboard", Strips),
        new("bargello-strip-tubes", "bargello", Tubes),
    ];

    private static WayPlan? Singly(UnitOrder order)
    {
        if (Rows(order) is not { } rows)
        {
            return null;
        }
        PieceSide width = new(SeamLoss.Straight, order.Width / rows[0].Length),
            height = new(SeamLoss.Straight, order.Height / rows.Length);
        return new WayPlan(
            [
                .. Enumerable
                    .Range(0, order.Roles)
                    .Select(role => new NeededPiece(
                        "patch",
                        role,
                        rows.Sum(row => row.Count(r => r == role)),
                        width,
                        height
                    )),
            ],
            1,
            UnitPictures.Grid(rows, order.Width, order.Height)
        );
    }

    /// <summary>
    /// Strips in the order of their roles, closed to a tube. A segment is a ring: opened at any seam it reads in the same order,
    /// from another strip on, so every row must be the strips' order turned on.
    /// </summary>
    private static WayPlan? Tubes(UnitOrder order)
    {
        if (Rows(order) is not { } rows || rows[0].Length != order.Roles)
        {
            return null;
        }
        foreach (ImmutableArray<int> row in rows)
        {
            for (int i = 0; i < row.Length; i++)
            {
                if (row[(i + 1) % row.Length] != (row[i] + 1) % order.Roles)
                {
                    return null;
                }
            }
        }
        return StripSets(order, rows) is { } plan
            ? plan with
            {
                Sets = [new NeededSet([.. Enumerable.Range(0, order.Roles)], rows.Length)],
                Pieces = [.. plan.Pieces.Select(p => p with { Count = rows.Length })],
            }
            : null;
    }

    private static WayPlan? Strips(UnitOrder order) =>
        Rows(order) is { } rows ? StripSets(order, rows) : null;

    /// <summary>
    /// Strips as wide as a cell are sewn side by side and cut across into rows of cells. Rows that read alike, from
    /// either end, come from one kind of set.
    /// </summary>
    public static WayPlan? StripSets(UnitOrder order, ImmutableArray<ImmutableArray<int>> rows)
    {
        PieceSide strip = new(SeamLoss.Straight, order.Width / rows[0].Length),
            segment = new(SeamLoss.Straight, order.Height / rows.Length);
        var sets = new List<NeededSet>();
        foreach (ImmutableArray<int> row in rows)
        {
            int known = sets.FindIndex(set =>
                set.Roles.SequenceEqual(row) || set.Roles.Reverse().SequenceEqual(row)
            );
            if (known < 0)
            {
                sets.Add(new NeededSet(row, 1));
            }
            else
            {
                sets[known] = sets[known] with { PerUnit = sets[known].PerUnit + 1 };
            }
        }
        return new WayPlan([], 0, UnitPictures.Grid(rows, order.Width, order.Height))
        {
            Sets = [.. sets],
            Segment = segment,
            Pieces =
            [
                .. Enumerable
                    .Range(0, order.Roles)
                    .Select(role => new NeededPiece(
                        "strip",
                        role,
                        sets.Sum(set => set.PerUnit * set.Roles.Count(r => r == role)),
                        new(Exact.Zero, order.StripLength),
                        strip,
                        WholeStrip: true
                    )),
            ],
        };
    }

    // "ab/ba": a letter for each cell, the role it shows.
    private static ImmutableArray<ImmutableArray<int>>? Rows(UnitOrder order)
    {
        string[] rows = order.Variant.Split('/');
        if (
            rows[0].Length == 0
            || rows.Any(row => row.Length != rows[0].Length)
            || rows.Any(row => row.Any(cell => cell < 'a' || cell >= 'a' + order.Roles))
        )
        {
            return null;
        }
        return [.. rows.Select(row => row.Select(cell => cell - 'a').ToImmutableArray())];
    }
}
