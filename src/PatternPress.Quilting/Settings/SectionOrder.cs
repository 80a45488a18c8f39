using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Rules;

namespace PatternPress.Quilting.Settings;

/// <summary>Finds the sections in which blocks and strips that fill a field are sewn.</summary>
internal static class SectionOrder
{
    /// <summary>The field with its order of sewing; null, and reported, where there is none.</summary>
    /// <param name="blocks">Plain blocks longer than their fabric is wide become strips, which are joined.</param>
    public static Field? Sewn(
        Layout layout,
        Length width,
        Length height,
        IReadOnlyList<BlockPlace> blocks,
        IReadOnlyList<Sash> sashing
    )
    {
        List<BlockPlace> places = [.. blocks.Where(b => !IsLong(b, layout))];
        List<Sash> strips = [.. sashing, .. blocks.Where(b => IsLong(b, layout)).Select(StripOf)];
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

    // As the cutting plan has it: too long for a strip of fabric, and not too wide for one.
    private static bool IsLong(BlockPlace block, Layout layout)
    {
        if (block.Block.Block is not null)
        {
            return false;
        }
        House house = layout.Size.House;
        Fabric? cloth = layout.Pattern.Fabric(block.Block.Coloring.Fabrics[Coloring.PlainPart]);
        Length usable = house.StripLength(cloth?.UsableWidth ?? house.UsableWidth),
            longer = Length.Max(block.Place.Width, block.Place.Height),
            shorter = Length.Min(block.Place.Width, block.Place.Height);
        return cloth is not { Directional: true }
            && house.Unfinished(longer) > usable
            && house.Unfinished(shorter) * 2 < usable;
    }

    private static Sash StripOf(BlockPlace block) =>
        new(
            block.Place.Width > block.Place.Height ? SashKind.Row : SashKind.Column,
            block.Row,
            block.Column,
            block.Place,
            block.Block.Coloring.Fabrics[Coloring.PlainPart]
        );

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
