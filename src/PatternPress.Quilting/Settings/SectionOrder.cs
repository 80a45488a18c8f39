using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Rules;

namespace PatternPress.Quilting.Settings;

/// <summary>Finds the sections in which blocks and strips that fill a field are sewn.</summary>
internal static class SectionOrder
{
    /// <summary>The field with its order of sewing; null, and reported, where there is none.</summary>
    public static Field? Sewn(
        Layout layout,
        Length width,
        Length height,
        IReadOnlyList<BlockPlace> places,
        IReadOnlyList<Sash> strips
    )
    {
        Rect[] pieces = [.. places.Select(p => p.Place), .. strips.Select(s => s.Place)];
        var order = SewingOrder.Of([.. pieces]);
        if (order.IsComplete)
        {
            return new Field(width, height, [.. places], [.. strips], [], []) { Order = order };
        }
        foreach (int[] stuck in Stuck(order))
        {
            Rect[] among = [.. stuck.Select(i => pieces[i])];
            layout.Findings.Add(
                PP0262_NoSewingOrder.Found(
                    layout.Design.Fill.Span,
                    layout.Size.Key,
                    [
                        .. stuck
                            .Where(i => i < places.Count)
                            .Select(i => places[i].Block.Key)
                            .Distinct(),
                    ],
                    among.Length,
                    among.Min(r => r.X),
                    among.Min(r => r.Y),
                    among.Max(r => r.Right),
                    among.Max(r => r.Bottom)
                )
            );
        }
        return null;
    }

    private static IEnumerable<int[]> Stuck(SewingOrder order) =>
        order switch
        {
            SewingOrder.Around { Middle: null } around =>
            [
                [.. around.Units()],
            ],
            SewingOrder.Around around => Stuck(around.Middle)
                .Concat(around.Parts.SelectMany(Stuck)),
            SewingOrder.Group group => group.Parts.SelectMany(Stuck),
            _ => [],
        };
}
