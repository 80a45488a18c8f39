using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>Turns chosen strips, which may make more than is asked for, into a plan of exactly the pieces asked for, in
/// the caller's kinds and units.</summary>
internal static class StripWriter
{
    public static ImmutableArray<Strip> Write(
        StripModel model,
        ImmutableArray<(StripPattern Pattern, long Times)> chosen
    )
    {
        var left = model
            .Members.Select(members => members.Select(member => member.Piece.Count).ToArray())
            .ToArray();
        var strips = new List<Strip>();

        // Strips that may be mixed only once keep their pieces; of the others those cut most often are filled first, so
        // that what is not needed is missing from as few kinds of strips as can be.
        var order = new List<(StripPattern Pattern, long Times)>();
        foreach (var (pattern, times) in chosen)
        {
            var known = order.FindIndex(strip => strip.Pattern.Equals(pattern));
            if (known < 0)
                order.Add((pattern, times));
            else
                order[known] = (pattern, order[known].Times + times);
        }
        foreach (
            var (pattern, times) in order.Sorted(
                (a, b) =>
                {
                    var (first, second) = (
                        model.Families[a.Pattern.Family],
                        model.Families[b.Pattern.Family]
                    );
                    return first.From != second.From ? second.From.CompareTo(first.From)
                        : first.Cap != second.Cap ? first.Cap.CompareTo(second.Cap)
                        : a.Times != b.Times ? b.Times.CompareTo(a.Times)
                        : second.Height.CompareTo(first.Height);
                }
            )
        )
            for (var rest = times; rest > 0; )
            {
                var segments = Fill(model, pattern, left, out var alike);
                if (segments.IsEmpty)
                    break;
                var copies = Math.Min(rest, alike);
                Take(model, segments, copies, left);
                rest -= copies;
                var from = model.Families[pattern.Family].From;
                strips.Add(
                    new(Height(segments), copies, Plain(segments)) { From = from < 0 ? null : from }
                );
            }

        return
        [
            .. Merge(strips)
                .Sorted(
                    (a, b) =>
                        a.Height != b.Height ? b.Height.CompareTo(a.Height)
                        : a.Copies != b.Copies ? b.Copies.CompareTo(a.Copies)
                        : a.Used != b.Used ? b.Used.CompareTo(a.Used)
                        : a.Segments[0].PieceId.CompareTo(b.Segments[0].PieceId)
                ),
        ];
    }

    private sealed record Portion(int Kind, int Member, StripSegment Segment);

    private static ImmutableArray<Portion> Fill(
        StripModel model,
        StripPattern pattern,
        long[][] left,
        out long alike
    )
    {
        var used = left.Select(members => new long[members.Length]).ToArray();
        var portions = ImmutableArray.CreateBuilder<Portion>();
        for (var i = 0; i < pattern.Placements.Length; i++)
        {
            var placement = model.Placements[pattern.Placements[i]];
            var kind = placement.Kind;
            var open = (long)pattern.Copies[i];
            for (var member = 0; member < left[kind].Length && open > 0; member++)
            {
                var count = Math.Min(open, left[kind][member] - used[kind][member]);
                if (count == 0)
                    continue;
                used[kind][member] += count;
                open -= count;
                var (piece, swapped) = model.Members[kind][member];
                var turned = placement.Turned != swapped && piece.Width != piece.Height;
                portions.Add(
                    new(
                        kind,
                        member,
                        new(
                            piece.Id,
                            count,
                            turned,
                            turned ? piece.Height : piece.Width,
                            turned ? piece.Width : piece.Height
                        )
                    )
                );
            }
        }
        alike =
            portions.Count == 0
                ? 0
                : portions.Min(portion =>
                    left[portion.Kind][portion.Member] / used[portion.Kind][portion.Member]
                );
        return portions.ToImmutable();
    }

    private static void Take(
        StripModel model,
        ImmutableArray<Portion> portions,
        long copies,
        long[][] left
    )
    {
        foreach (var portion in portions)
            left[portion.Kind][portion.Member] -= portion.Segment.Count * copies;
    }

    /// <summary>A strip is no taller than the tallest of its pieces: where strips may be mixed but so often, a lower one
    /// may take the place of a taller one.</summary>
    private static long Height(ImmutableArray<Portion> portions) =>
        portions.Max(portion => portion.Segment.Height);

    private static ImmutableArray<StripSegment> Plain(ImmutableArray<Portion> portions) =>
        [
            .. portions
                .Select(portion => portion.Segment)
                .Sorted(
                    (a, b) =>
                        a.Height != b.Height ? b.Height.CompareTo(a.Height)
                        : a.Width != b.Width ? b.Width.CompareTo(a.Width)
                        : a.PieceId.CompareTo(b.PieceId)
                ),
        ];

    private static IEnumerable<Strip> Merge(List<Strip> strips)
    {
        var merged = new List<Strip>();
        foreach (var strip in strips)
        {
            var known = merged.FindIndex(other =>
                other.Height == strip.Height
                && other.From == strip.From
                && other.Segments.SequenceEqual(strip.Segments)
            );
            if (known < 0)
                merged.Add(strip);
            else
                merged[known] = strip with { Copies = merged[known].Copies + strip.Copies };
        }
        return merged;
    }
}
