using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>Turns chosen panels into a plan of exactly the pieces asked for, in the caller's kinds and units.</summary>
internal static class PanelWriter
{
    public static ImmutableArray<PanelLayout> Write(PanelModel model, List<CutPanel> chosen)
    {
        var left = model
            .Members.Select(members => members.Select(member => member.Piece.Count).ToArray())
            .ToArray();
        var layouts = new List<PanelLayout>();
        foreach (var panel in chosen.OrderByDescending(panel => panel.Times))
            for (var rest = panel.Times; rest > 0; )
            {
                var (strips, used) = Fill(model, panel, left);
                if (strips.IsEmpty)
                    break;
                var copies = rest;
                for (var kind = 0; kind < left.Length; kind++)
                for (var member = 0; member < left[kind].Length; member++)
                    if (used[kind][member] > 0)
                        copies = Math.Min(copies, left[kind][member] / used[kind][member]);
                for (var kind = 0; kind < left.Length; kind++)
                for (var member = 0; member < left[kind].Length; member++)
                    left[kind][member] -= copies * used[kind][member];
                rest -= copies;
                Add(layouts, new(copies, model.Sides[panel.Side].Up, strips));
            }
        return [.. Filled(model, [.. layouts.OrderByDescending(layout => layout.Copies)])];
    }

    /// <summary>Moves strips into earlier panels that have room for them, so that what is left over is left in one piece.
    /// </summary>
    private static List<PanelLayout> Filled(PanelModel model, List<PanelLayout> layouts)
    {
        for (var to = 0; to < layouts.Count; to++)
        {
            var side = Array.Find(model.Sides, side => side.Up == layouts[to].Up)!;
            var free =
                (side.Extent * side.ExtentUnit) - layouts[to].Strips.Sum(strip => strip.Total);
            for (var from = to + 1; from < layouts.Count; from++)
            {
                if (
                    layouts[from].Copies != layouts[to].Copies
                    || layouts[from].Up != layouts[to].Up
                )
                    continue;
                while (layouts[from].Strips.FirstOrDefault(s => s.Height <= free) is { } strip)
                {
                    free -= strip.Height;
                    layouts[to] = layouts[to] with
                    {
                        Strips = Sorted([.. layouts[to].Strips, strip with { Copies = 1 }]),
                    };
                    layouts[from] = layouts[from] with
                    {
                        Strips = Sorted([
                            .. layouts[from].Strips.Remove(strip),
                            strip with
                            {
                                Copies = strip.Copies - 1,
                            },
                        ]),
                    };
                }
            }
        }
        layouts.RemoveAll(layout => layout.Strips.IsEmpty);
        return layouts;
    }

    /// <summary>Tallest first, those of which most are cut alike before others; like ones together.</summary>
    private static ImmutableArray<Strip> Sorted(ImmutableArray<Strip> strips)
    {
        var merged = new List<Strip>();
        foreach (var strip in strips.Where(strip => strip.Copies > 0))
        {
            var same = merged.FindIndex(other =>
                IsSame(other with { Copies = strip.Copies }, strip)
            );
            if (same < 0)
                merged.Add(strip);
            else
                merged[same] = strip with { Copies = merged[same].Copies + strip.Copies };
        }
        return
        [
            .. merged
                .OrderByDescending(strip => strip.Height)
                .ThenByDescending(strip => strip.Copies),
        ];
    }

    private static void Add(List<PanelLayout> layouts, PanelLayout layout)
    {
        var same = layouts.FindIndex(other =>
            other.Up == layout.Up
            && other.Strips.Length == layout.Strips.Length
            && other.Strips.Zip(layout.Strips).All(pair => IsSame(pair.First, pair.Second))
        );
        if (same < 0)
            layouts.Add(layout);
        else
            layouts[same] = layout with { Copies = layouts[same].Copies + layout.Copies };
    }

    private static bool IsSame(Strip a, Strip b) =>
        a.Height == b.Height && a.Copies == b.Copies && a.Segments.SequenceEqual(b.Segments);

    private static (ImmutableArray<Strip> Strips, long[][] Used) Fill(
        PanelModel model,
        CutPanel panel,
        long[][] left
    )
    {
        var side = model.Sides[panel.Side];
        var used = left.Select(members => new long[members.Length]).ToArray();
        var strips = new List<Strip>();
        foreach (var strip in panel.Strips.OrderBy(strip => strip.Height))
        {
            var segments = new List<StripSegment>();
            for (var i = 0; i < strip.Copies.Length; i++)
            {
                var lie = side.Lies[i];
                var open = (long)strip.Copies[i];
                for (var member = 0; member < left[lie.Kind].Length && open > 0; member++)
                {
                    var count = Math.Min(open, left[lie.Kind][member] - used[lie.Kind][member]);
                    if (count == 0)
                        continue;
                    used[lie.Kind][member] += count;
                    open -= count;
                    var piece = model.Members[lie.Kind][member].Piece;
                    long width = lie.Width * side.RoomUnit,
                        height = lie.Height * side.ExtentUnit;
                    segments.Add(new(piece.Id, count, width != piece.Width, width, height));
                }
            }
            if (segments.Count == 0)
                continue;
            var whole = new Strip(
                segments.Max(segment => segment.Height),
                1,
                [
                    .. segments
                        .OrderByDescending(segment => segment.Height)
                        .ThenByDescending(segment => segment.Width)
                        .ThenBy(segment => segment.PieceId),
                ]
            );
            strips.Add(whole);
        }
        return (Sorted([.. strips]), used);
    }
}
