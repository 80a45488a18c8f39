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
        return [.. layouts.OrderByDescending(layout => layout.Copies)];
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
            var same = strips.FindIndex(other => IsSame(other with { Copies = 1 }, whole));
            if (same < 0)
                strips.Add(whole);
            else
                strips[same] = whole with { Copies = strips[same].Copies + 1 };
        }
        return (
            [.. strips.OrderByDescending(strip => strip.Height).ThenByDescending(s => s.Copies)],
            used
        );
    }
}
