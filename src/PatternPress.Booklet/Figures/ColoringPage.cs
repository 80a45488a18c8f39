using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Resolving;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>The quilt in outline only, for the maker's own colours: every patch open, blocks and borders a little bolder.</summary>
public static class ColoringPage
{
    public static Picture Draw(Quilt quilt, Palette palette, FigureRoom room)
    {
        FigureStyle style = palette.Style;
        var flat = FlatQuilt.Of(quilt);
        double edge = style.Bold.Value;
        double scale = Math.Min(
            (room.Width.Value - edge) / flat.Width,
            (room.Height.Value - edge) / flat.Height
        );
        var by = new Spot(edge / 2, edge / 2);
        var draft = new Draft(style);
        var seams = new SeamLines();
        foreach (FlatQuilt.FlatPatch patch in flat.Patches)
        {
            seams.Add(patch.Corners, patch.By);
        }
        draft.Area(
            Paths.Lines(seams.Seams(), scale, by),
            stroke: style.Pen(style.Hair) with
            {
                Cap = StrokeCap.Butt,
            }
        );
        var joins = new SeamLines();
        foreach (BlockPlace place in quilt.AllBlocks())
        {
            joins.Add(FlatQuilt.OutlineOf(place));
        }
        foreach (Border border in quilt.Borders)
        {
            joins.Add(FlatQuilt.ToBox(border.Inside).Corners());
        }
        draft.Area(
            Paths.Lines(joins.Seams(), scale, by),
            stroke: style.Pen(style.Edge) with
            {
                Cap = StrokeCap.Square,
            }
        );
        var whole = new Box(by.X, by.Y, flat.Width * scale, flat.Height * scale);
        draft.Area(Paths.Of(whole), stroke: style.Pen(style.Bold) with { Join = StrokeJoin.Miter });
        return new(
            draft.Finish(whole.Right + (edge / 2), whole.Bottom + (edge / 2)),
            FigureWords.ColoringPage(quilt)
        );
    }
}
