using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Resolving;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>One block in outline, each of its units marked with its letter in the block's map or another label.</summary>
public static class BlockOutline
{
    /// <param name="labels">What is written into each unit, in the order of the block's units; empty for the map's letters.</param>
    public static Picture Draw(
        Block block,
        IReadOnlyList<string> labels,
        Palette palette,
        FigureRoom room
    )
    {
        FigureStyle style = palette.Style;
        var draft = new Draft(style);
        double edge = style.Edge.Value;
        double width = block.Width.Inches.ToDouble(),
            height = block.Height.Inches.ToDouble();
        double scale = Math.Min(
            (room.Width.Value - edge) / width,
            (room.Height.Value - edge) / height
        );
        var by = new Spot(edge / 2, edge / 2);
        var seams = new SeamLines();
        var units = new SeamLines();
        foreach (BlockUnit unit in block.Units)
        {
            foreach (Spot[] patch in ShapesOf(unit))
            {
                seams.Add(patch);
            }
            units.Add(FlatQuilt.ToBox(unit.Place).Corners());
        }
        draft.Area(
            Paths.Lines(seams.Seams(), scale, by),
            stroke: style.Pen(style.Hair, style.Quiet)
        );
        draft.Area(
            Paths.Lines(units.Seams(), scale, by),
            stroke: style.Pen(style.Edge) with
            {
                Cap = StrokeCap.Square,
            }
        );
        for (int i = 0; i < block.Units.Length; i++)
        {
            string label = i < labels.Count ? labels[i] : block.Units[i].Region.Design.Letter;
            Box box = FlatQuilt.ToBox(block.Units[i].Place);
            if (
                LabelSize.Width(label, style.Medium.Value) + 2 < box.Width * scale
                && (style.Medium.Value * LabelSize.Capital) + 2 < box.Height * scale
            )
            {
                draft.Label(
                    label,
                    (box.Center * scale) + by,
                    style.Medium,
                    bold: true,
                    plate: Ink.White
                );
            }
        }
        return new(
            draft.Finish((width * scale) + edge, (height * scale) + edge),
            FigureWords.BlockOutline(block)
        );
    }

    /// <summary>The patches of a unit in the block, not yet coloured.</summary>
    internal static IEnumerable<Spot[]> ShapesOf(BlockUnit unit)
    {
        var form = unit.Drawn.Form;
        return form.Patches.Select(patch =>
            FlatQuilt.ToSpots(
                patch
                    .Shape.Turned(unit.Drawn.Turn, form.Width, form.Height)
                    .MoveBy(unit.Place.UpperLeft)
            )
        );
    }
}
