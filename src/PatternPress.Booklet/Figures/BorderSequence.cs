using System.Globalization;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Resolving;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// The borders pulled away from the quilt: arrows numbered in the order the strips are sewn on. It shows one size but holds
/// for all: lengths stand in the tables.
/// </summary>
public static class BorderSequence
{
    /// <summary>Between a number and the strips beside it.</summary>
    private const double Clear = 1.5;

    /// <summary>Between two strips: room for a numbered disc.</summary>
    private const double Gap = 16;

    /// <summary>The least width of the middle, in radii of a numbered disc.</summary>
    private const double LeastMiddle = 6;

    /// <param name="all">The numbers of the steps in all sizes; null where there is no other size.</param>
    public static Picture Draw(
        Quilt quilt,
        Palette palette,
        FigureRoom room,
        BorderSteps? all = null
    )
    {
        BorderSteps numbers = all ?? BorderSteps.Of([quilt]);
        FigureStyle style = palette.Style;
        var draft = new Draft(style);
        double edge = style.Edge.Value;
        int steps = quilt.Borders.Length;
        // In each gap stands a number, clear of the strips on both sides of it.
        double gap = Math.Max(Gap * style.Enlarged, (2 * draft.DiscRadius("0")) + Clear);
        double gaps = (2 * gap * steps) + edge;
        double scale = Math.Min(
            (room.Width.Value - gaps) / quilt.Width.Inches.ToDouble(),
            (room.Height.Value - gaps) / quilt.Height.Inches.ToDouble()
        );
        Box center = FlatQuilt.ToBox(quilt.Center);
        // Where many borders take the room, the figure grows taller rather than let the numbers around the middle meet.
        scale = Math.Max(
            scale,
            Math.Min(
                (room.Width.Value - gaps) / quilt.Width.Inches.ToDouble(),
                (LeastMiddle * draft.DiscRadius("0")) / Math.Min(center.Width, center.Height)
            )
        );
        double away = gap * steps;
        // Everything keeps its place in the quilt and moves outward with its border.
        var by = new Spot((edge / 2) + away, (edge / 2) + away);
        PaintCenter(draft, quilt, palette, scale, by);
        for (int i = 0; i < quilt.Borders.Length; i++)
        {
            PaintBorder(draft, quilt.Borders[i], palette, scale, by, gap * (i + 1));
        }
        for (int i = 0; i < quilt.Borders.Length; i++)
        {
            foreach ((int number, BorderSide[] sides) in numbers.For(quilt.Borders[i]))
            {
                foreach (BorderSide side in sides)
                {
                    Mark(draft, quilt.Borders[i], i, side, number, scale, by, gap);
                }
            }
        }
        Box whole = new(
            0,
            0,
            (quilt.Width.Inches.ToDouble() * scale) + gaps,
            (quilt.Height.Inches.ToDouble() * scale) + gaps
        );
        return new(
            draft.Finish(whole.Width, whole.Height),
            FigureWords.BorderSequence(quilt, numbers)
        );
    }

    private static void PaintCenter(
        Draft draft,
        Quilt quilt,
        Palette palette,
        double scale,
        Spot by
    )
    {
        FigureStyle style = draft.Style;
        var flat = FlatQuilt.Of(quilt);
        var inner = flat.Patches.Where(p => p.Place != FlatQuilt.Border);
        foreach (var same in inner.GroupBy(p => p.Fabric))
        {
            var lines = new SeamLines();
            foreach (FlatQuilt.FlatPatch patch in same)
            {
                lines.Add(patch.Corners, patch.By);
            }
            // Washed out: this figure is about what goes round it.
            draft.Area(
                Paths.Closed(lines.Outline(), scale, by),
                palette[same.Key].Color.MixedWith(Ink.White, 0.55)
            );
        }
        Box center = FlatQuilt.ToBox(quilt.Center);
        Box box = new(
            (center.X * scale) + by.X,
            (center.Y * scale) + by.Y,
            center.Width * scale,
            center.Height * scale
        );
        draft.Area(Paths.Of(box), stroke: style.Pen(style.Edge) with { Join = StrokeJoin.Miter });
        draft.Board.Take(box);
    }

    private static void PaintBorder(
        Draft draft,
        Border border,
        Palette palette,
        double scale,
        Spot by,
        double away
    )
    {
        FigureStyle style = draft.Style;
        foreach (BorderPiece piece in border.Pieces)
        {
            Box box = FlatQuilt.ToBox(piece.Place);
            Spot moved = by + Outward(border, piece.Side, box, away);
            Box place = new(
                (box.X * scale) + moved.X,
                (box.Y * scale) + moved.Y,
                box.Width * scale,
                box.Height * scale
            );
            FabricLook look = palette[piece.Fabric];
            Spot[] shape = piece.Mitered is { } mitered
                ? [.. FlatQuilt.ToSpots(mitered).Select(corner => (corner * scale) + moved)]
                : place.Corners();
            draft.Area(
                Paths.Closed(shape),
                look.Color,
                style.Pen(style.Edge) with
                {
                    Join = StrokeJoin.Miter,
                },
                style.IsBlackOnly ? look.Hatch : null
            );
            draft.Board.Take(place);
        }
        // Blocks of a side keep together; those in corners go with the rows they are sewn to.
        foreach (
            var row in border.Blocks.GroupBy(block =>
            {
                Spot outward = Outward(
                    border,
                    block.Side,
                    FlatQuilt.ToBox(block.Place.Place),
                    away
                );
                return (outward.X, outward.Y);
            })
        )
        {
            BorderRows.PaintBlocks(draft, row, palette, scale, by + new Spot(row.Key.X, row.Key.Y));
        }
    }

    // Corners go with the top and bottom they are sewn to.
    private static Spot Outward(Border border, BorderSide side, Box place, double away)
    {
        Box inside = FlatQuilt.ToBox(border.Inside);
        return side switch
        {
            BorderSide.Left => new(-away, 0),
            BorderSide.Right => new(away, 0),
            BorderSide.Top => new(0, -away),
            BorderSide.Bottom => new(0, away),
            _ => new(0, place.Center.Y > inside.Center.Y ? away : -away),
        };
    }

    // In the gap inside the strip: an arrow toward the quilt and the number beside it.
    private static void Mark(
        Draft draft,
        Border border,
        int order,
        BorderSide side,
        int number,
        double scale,
        Spot by,
        double gap
    )
    {
        FigureStyle style = draft.Style;
        Box inside = FlatQuilt.ToBox(border.Inside);
        Box edge = new(
            (inside.X * scale) + by.X,
            (inside.Y * scale) + by.Y,
            inside.Width * scale,
            inside.Height * scale
        );
        double far = gap * (order + 0.5),
            half = (gap / 2) - 2.5;
        bool level = side is BorderSide.Top or BorderSide.Bottom;
        Spot middle = side switch
        {
            BorderSide.Left => new(edge.X - far, edge.Center.Y),
            BorderSide.Right => new(edge.Right + far, edge.Center.Y),
            BorderSide.Top => new(edge.Center.X, edge.Y - far),
            _ => new(edge.Center.X, edge.Bottom + far),
        };
        Spot inward = side switch
        {
            BorderSide.Left => new(1, 0),
            BorderSide.Right => new(-1, 0),
            BorderSide.Top => new(0, 1),
            _ => new(0, -1),
        };
        draft.Arrow(middle - (inward * half), middle + (inward * half), style.Pen(style.Edge), 4);
        double radius = draft.DiscRadius("0");
        string numeral = number.ToString(CultureInfo.InvariantCulture);
        Spot along = level ? new(1, 0) : new(0, 1);
        // By turns on either side of the middle: numbers of neighbouring borders do not meet.
        double turn = order % 2 == 0 ? -1 : 1;
        draft.Disc(numeral, middle + (along * (turn * (radius + 5))));
    }
}
