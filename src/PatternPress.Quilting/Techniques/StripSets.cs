using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Techniques;

/// <summary>
/// Strips of cell width + 2s across the usable width, sewn side by side, cut across into segments of cell height +
/// 2s: each segment is a row of the unit.
/// </summary>
internal static class StripSets
{
    public static Recipe Recipe(
        Technique technique,
        UnitForm form,
        CellGrid grid,
        Length usableWidth,
        House house
    )
    {
        ImmutableArray<StripSet> sets = Sets(form, grid, usableWidth, house);
        (CutSize strip, CutSize segment) = Cell(form, grid, house);
        var pictures = new StripPictures(strip.Cut, segment.Cut, house);
        bool isRail = grid.Rows.Length == 1 || grid.Tube;
        var sewing = new Sewing(form, house);
        return Batch.Of(
            technique,
            form,
            house,
            Pieces(form, grid, usableWidth, house),
            Yield(sets),
            trim: false,
            measures: [("segment", segment.Cut)],
            steps:
            [
                new Step("sew-strips", () => pictures.Sew(sets, oneWay: isRail)),
                .. grid.Tube
                    ? (ReadOnlySpan<Step>)[new Step("close-tube", () => pictures.Close(sets[0]))]
                    : [],
                new Step("cut-segments", () => pictures.Cut(sets)),
                .. grid.Tube
                    ?
                    [
                        new Step("open-segments", () => GridPictures.RowsApart(sewing, grid)),
                        new Step("join-segments", () => GridPictures.JoinRows(sewing, grid)),
                    ]
                : isRail ? (ReadOnlySpan<Step>)[]
                : [new Step("join-rows", () => GridPictures.JoinRows(sewing, grid))],
                new Step("measure", () => sewing.Finish(false, Length.Zero, 1)),
            ]
        ) with
        {
            StripSets = sets,
        };
    }

    /// <summary>Strips for one batch: as many sets of each kind as a unit has segments of it.</summary>
    public static ImmutableArray<RecipePiece> Pieces(
        UnitForm form,
        CellGrid grid,
        Length usableWidth,
        House house
    )
    {
        (CutSize strip, _) = Cell(form, grid, house);
        ImmutableArray<StripSet> sets = Sets(form, grid, usableWidth, house);
        return
        [
            .. Enumerable
                .Range(0, grid.RoleCount)
                .Select(role => new RecipePiece(
                    "strip",
                    role,
                    usableWidth,
                    strip.Cut,
                    (usableWidth, strip.Exactly),
                    sets.Sum(set =>
                        set.SegmentsPerUnit / Share(sets) * set.Roles.Count(r => r == role)
                    ),
                    PieceCut.None,
                    true
                )),
        ];
    }

    public static string? Refusal(UnitForm form, CellGrid grid, Length usableWidth, House house)
    {
        foreach (StripSet set in Sets(form, grid, usableWidth, house))
        {
            if (set.SegmentsPerSet < 1)
            {
                return $"a segment of {Told.One(set.Segment)} is longer than a strip of the fabric, {Told.One(usableWidth)}";
            }
        }
        return null;
    }

    // Rows that read alike from the left or, turned, from the right are cut from one kind of set.
    private static ImmutableArray<StripSet> Sets(
        UnitForm form,
        CellGrid grid,
        Length usableWidth,
        House house
    )
    {
        (_, CutSize segment) = Cell(form, grid, house);
        int perSet = (int)usableWidth.CountOf(segment.Cut);
        if (grid.Tube)
        {
            return
            [
                new StripSet(
                    [.. Enumerable.Range(0, grid.Columns)],
                    grid.Rows.Length,
                    perSet,
                    segment.Cut
                ),
            ];
        }
        var sets = new List<StripSet>();
        foreach (ImmutableArray<int> row in grid.Rows)
        {
            int known = sets.FindIndex(s =>
                s.Roles.SequenceEqual(row) || s.Roles.Reverse().SequenceEqual(row)
            );
            if (known < 0)
            {
                sets.Add(new StripSet(row, 1, perSet, segment.Cut));
            }
            else
            {
                sets[known] = sets[known] with
                {
                    SegmentsPerUnit = sets[known].SegmentsPerUnit + 1,
                };
            }
        }
        return [.. sets];
    }

    // The fewest sets that are used up together: a unit of 2 rows of one kind and 2 of another takes 1 set of each.
    private static int Share(ImmutableArray<StripSet> sets)
    {
        int share = sets.Aggregate(0, (g, set) => Gcd(set.SegmentsPerUnit, g));
        return sets[0].SegmentsPerSet >= share ? share : 1;

        static int Gcd(int a, int b) => b == 0 ? a : Gcd(b, a % b);
    }

    private static int Yield(ImmutableArray<StripSet> sets) => sets[0].SegmentsPerSet / Share(sets);

    private static (CutSize Strip, CutSize Segment) Cell(
        UnitForm form,
        CellGrid grid,
        House house
    ) =>
        (
            CutSize.Close(house.Unfinished(form.Width / grid.Columns), house),
            CutSize.Close(house.Unfinished(form.Height / grid.Rows.Length), house)
        );
}
