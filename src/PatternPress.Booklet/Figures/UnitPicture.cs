using System.Collections.Immutable;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Techniques;

namespace PatternPress.Booklet.Figures;

/// <summary>One finished unit in its fabrics, with their letters where there is room.</summary>
public static class UnitPicture
{
    /// <param name="fabrics">Fabric key by role.</param>
    public static Picture Draw(
        UnitForm form,
        ImmutableArray<string> fabrics,
        Palette palette,
        FigureRoom room,
        BlockMarking marking = BlockMarking.Letters
    )
    {
        var draft = new Draft(palette.Style);
        double edge = palette.Style.Edge.Value,
            width = form.Width.Inches.ToDouble(),
            height = form.Height.Inches.ToDouble();
        double scale = Math.Min(
            (room.Width.Value - edge) / width,
            (room.Height.Value - edge) / height
        );
        var by = new Spot(edge / 2, edge / 2);
        FlatQuilt.FlatPatch[] patches =
        [
            .. form.Patches.Select(p => new FlatQuilt.FlatPatch(
                FlatQuilt.ToSpots(p.Shape),
                default,
                p.Role < fabrics.Length ? fabrics[p.Role] : "",
                0
            )),
            .. form.Overlays.Select(
                (o, i) =>
                    new FlatQuilt.FlatPatch(
                        FlatQuilt.ToSpots(o.Shape),
                        default,
                        o.Role < fabrics.Length ? fabrics[o.Role] : "",
                        0
                    )
                    {
                        Layer = i + 1,
                    }
            ),
        ];
        BlockPicture.PaintPatches(draft, patches, palette, scale, by, marking);
        draft.Area(
            Paths.Of(new Box(by.X, by.Y, width * scale, height * scale)),
            stroke: palette.Style.Pen(palette.Style.Edge)
        );
        return new(
            draft.Finish((width * scale) + edge, (height * scale) + edge),
            FigureWords.UnitPicture(form, fabrics, palette)
        );
    }
}
