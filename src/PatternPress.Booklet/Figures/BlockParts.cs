using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// A block in one coloring with letters and hatches, and beside it the name of each of its parts with a line to a patch of it.
/// </summary>
public static class BlockParts
{
    /// <summary>Between the block and the names.</summary>
    private const double Lead = 10;

    public static Picture Draw(
        ColoredBlock block,
        Pattern pattern,
        Palette palette,
        FigureRoom room
    )
    {
        FigureStyle style = palette.Style;
        var draft = new Draft(style);
        List<(string Name, Spot Place)> parts = PartsOf(block);
        double words = parts
            .Select(p => LabelSize.Width(p.Name, style.Medium.Value))
            .DefaultIfEmpty(0)
            .Max();
        double edge = style.Edge.Value,
            beside = parts.Count == 0 ? 0 : Lead + words + 2;
        double scale = Math.Min(
            (room.Width.Value - edge - beside) / block.Width.Inches.ToDouble(),
            (room.Height.Value - edge) / block.Height.Inches.ToDouble()
        );
        var by = new Spot(edge / 2, edge / 2);
        double width = block.Width.Inches.ToDouble() * scale,
            height = block.Height.Inches.ToDouble() * scale;
        BlockPicture.Paint(draft, block, Turn.None, palette, scale, by, BlockMarking.Letters);
        double line = style.Medium.Value * 1.5,
            last = -line;
        // From the top down, each name clear of the one above and none below the block.
        parts.Sort((a, b) => (a.Place.Y, a.Place.X).CompareTo((b.Place.Y, b.Place.X)));
        for (int i = 0; i < parts.Count; i++)
        {
            Spot target = (parts[i].Place * scale) + by;
            double lowest = height - (line * (parts.Count - i - 0.5));
            double y = Math.Max(last + line, Math.Min(Math.Max(target.Y, line / 2), lowest));
            last = y;
            var from = new Spot(width + edge + Lead - 2, y);
            draft.Lines([(from, target)], style.Pen(Points.Of(1.8), Ink.White));
            draft.Lines([(from, target)], style.Pen(style.Hair));
            draft.Area(
                VectorPath.Circle(Paths.At(target), 1.6),
                style.Ink,
                style.Pen(style.Hair, Ink.White)
            );
            draft.Text(
                parts[i].Name,
                new Spot(width + edge + Lead, y),
                style.Medium,
                LabelSize.Width(parts[i].Name, style.Medium.Value),
                bold: true
            );
        }
        return new(
            draft.Finish(width + edge + beside, Math.Max(height + edge, last + (line / 2))),
            FigureWords.Block(block, pattern)
        );
    }

    // Each part with a place in the patch of it that lies farthest to the right: its line is short.
    private static List<(string Name, Spot Place)> PartsOf(ColoredBlock block)
    {
        var places = new List<(string Name, Spot Place)>();
        if (block.Block is null)
        {
            return places;
        }
        foreach (
            var part in block
                .Block.Units.SelectMany(unit =>
                    unit.Patches(
                        unit.Drawn.Parts.Distinct().ToDictionary(name => name, name => name)
                    )
                )
                .GroupBy(patch => patch.Fabric)
        )
        {
            Spot[] best = part.Select(patch => FlatQuilt.ToSpots(patch.Shape))
                .OrderByDescending(shape => Math.Round(Middle(shape).X, 4))
                .ThenBy(shape => Math.Round(Middle(shape).Y, 4))
                .First();
            Spot middle = Middle(best);
            // Aside from the middle, where the letter stands.
            Spot corner = best.OrderByDescending(c => Math.Round(c.X, 4))
                .ThenBy(c => Math.Round(c.Y, 4))
                .First();
            places.Add((part.Key, Spot.Between(middle, corner, 0.5)));
        }
        return places;
    }

    private static Spot Middle(Spot[] shape) =>
        shape.Aggregate((a, b) => a + b) * (1.0 / shape.Length);
}
