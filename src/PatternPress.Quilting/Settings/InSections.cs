using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Rules;

namespace PatternPress.Quilting.Settings;

/// <summary>
/// Blocks of several sizes on a grid whose columns and rows may be of unlike widths: touching cells of one coloring are one
/// block. Sewn in sections whose seams run straight from edge to edge, and with partial seams where parts go around each other.
/// </summary>
public sealed class InSections : Setting
{
    public override string Keyword => "in-sections";

    public override bool HasGrid => true;

    public override Field? Lay(Layout layout)
    {
        var cells = new CellGrid(
            layout,
            CellGrid.Lines(layout.Design.Columns!.Value.Value, layout.Size.Columns),
            CellGrid.Lines(layout.Design.Rows!.Value.Value, layout.Size.Rows)
        );
        return cells.Blocks() is not { } places
            ? null
            : Sewn(layout, cells.Width, cells.Height, places);
    }

    /// <summary>A field of places that fill it, with the order that they are sewn in; null where there is none.</summary>
    internal static Field? Sewn(
        Layout layout,
        Length width,
        Length height,
        IReadOnlyList<BlockPlace> places
    )
    {
        var order = SewingOrder.Of([.. places.Select(p => p.Place)]);
        if (order.IsComplete)
        {
            return new Field(width, height, [.. places], [], [], []) { Order = order };
        }
        foreach (int[] stuck in Stuck(order))
        {
            Rect[] among = [.. stuck.Select(i => places[i].Place)];
            layout.Findings.Add(
                PP0262_NoSewingOrder.Found(
                    layout.Design.Fill.Span,
                    layout.Size.Key,
                    [.. stuck.Select(i => places[i].Block.Key).Distinct()],
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
