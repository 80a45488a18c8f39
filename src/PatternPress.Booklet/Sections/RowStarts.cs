using System.Collections.Immutable;
using PatternPress.Booklet.Figures;
using PatternPress.Booklet.Words;
using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Tables;

namespace PatternPress.Booklet.Sections;

/// <summary>
/// How the rows of a border of blocks begin and go on: which block comes first, how it is turned, which way its geese point,
/// and whether the blocks turn over in the middle. For the words of <c>border.md</c>.
/// </summary>
internal static class RowStarts
{
    /// <summary>A repeat of more blocks is not told one by one.</summary>
    private const int LongestRepeat = 4;

    /// <param name="Lies">Quarter turns clockwise from how the block is drawn, outer edge up.</param>
    /// <param name="Points">Where its geese point: 0 outward, 1 right, 2 to the quilt, 3 left; null for other blocks.</param>
    private sealed record Spot(string Name, int Lies, int? Points);

    private sealed record Start(Spot First, string Names, Spot? Middle, Spot? Last);

    /// <param name="bySize">The border's cells of the sizes that sew it alike.</param>
    public static ImmutableArray<WordData> Of(
        IReadOnlyList<BorderCell?> bySize,
        SectionContext context
    )
    {
        var starts = new List<(Start Start, BorderPart Part, int Size)>();
        for (int i = 0; i < bySize.Count; i++)
        {
            foreach (BorderBlocksRow row in bySize[i]?.Rows ?? [])
            {
                if (row.Part != BorderPart.Corners && !row.Blocks.IsEmpty)
                {
                    starts.Add((StartOf(row.Blocks, context), row.Part, i));
                }
            }
        }
        var told = ImmutableArray.CreateBuilder<WordData>();
        foreach (var alike in starts.GroupBy(s => s.Start))
        {
            List<BorderPart> parts = [.. alike.Select(s => s.Part).Distinct()];
            HashSet<int> sizes = [.. alike.Select(s => s.Size)];
            (Start start, Spot? last) = (alike.Key, alike.Key.Last);
            told.Add(
                WordData
                    .Empty.With(
                        "which",
                        parts.Count > 1 ? "all"
                            : parts[0] == BorderPart.Sides ? "sides"
                            : "ends"
                    )
                    .With(
                        "only",
                        sizes.SetEquals(starts.Select(s => s.Size))
                            ? null
                            : context.Only(sizes.Contains)
                    )
                    .With("first", start.First.Name)
                    .With("lies", start.First.Lies)
                    .With("points", start.First.Points)
                    .With(
                        "names",
                        start.Names.Length == 0
                            ? ImmutableArray<string>.Empty
                            : [.. start.Names.Split('\n')]
                    )
                    .With("middle", start.Middle?.Name)
                    .With("last", last?.Name)
                    .With("last_lies", last?.Lies ?? 0)
                    .With("last_points", last?.Points)
            );
        }
        return told.ToImmutable();
    }

    private static Start StartOf(ImmutableArray<PlacementCell> cells, SectionContext context)
    {
        Spot[] spots = [.. cells.Select(cell => SpotOf(cell, context))];
        if (RepeatOf(spots) is { } whole)
        {
            return new Start(spots[0], Named(whole), null, null);
        }
        // Else the repeat turns over in the middle, with or without a block of its own there.
        Spot[] half = spots[..(spots.Length / 2)];
        Spot? middle =
            spots.Length % 2 == 1 && !half.Contains(spots[spots.Length / 2])
                ? spots[spots.Length / 2]
                : null;
        return new Start(
            spots[0],
            RepeatOf(half) is { } repeat ? Named(repeat) : "",
            middle,
            spots[^1] == spots[0] ? null : spots[^1]
        );
    }

    /// <summary>The blocks that repeat from the left end; null where none do.</summary>
    private static Spot[]? RepeatOf(Spot[] spots)
    {
        for (int length = 1; length <= Math.Min(LongestRepeat, spots.Length); length++)
        {
            bool repeats = true;
            for (int i = length; i < spots.Length && repeats; i++)
            {
                repeats = spots[i] == spots[i - length];
            }
            if (repeats && (length == 1 || spots.Length > length))
            {
                return spots[..length];
            }
        }
        return null;
    }

    private static string Named(Spot[] repeat) =>
        repeat.Length == 1 ? "" : string.Join('\n', repeat.Select(spot => spot.Name));

    private static Spot SpotOf(PlacementCell cell, SectionContext context) =>
        new(
            MarkdownText.Escape(BlockNames.Of(cell.Coloring, cell.Number)),
            cell.Turn.Quarters,
            Points(cell, context)
        );

    private static readonly string[] Directions = ["up", "right", "down", "left"];

    /// <summary>Where the geese of a block of nothing but geese, all alike, point.</summary>
    private static int? Points(PlacementCell cell, SectionContext context)
    {
        if (
            context.Tables.Blocks.FirstOrDefault(b => b.Coloring == cell.Coloring)?.Block
                is not { } key
            || context.Pattern.Block(key) is not { Units.IsEmpty: false } block
        )
        {
            return null;
        }
        int? all = null;
        foreach (UnitRegion region in block.Units)
        {
            if (
                region.Design is not { Kind.Value: "geese", Places.Length: 1 } design
                || Array.IndexOf(Directions, design.Places[0].Value) is not (>= 0 and var up)
            )
            {
                return null;
            }
            int points = (region.Turn + cell.Turn + new Turn(up)).Quarters;
            if (all is { } known && known != points)
            {
                return null;
            }
            all = points;
        }
        return all;
    }
}
