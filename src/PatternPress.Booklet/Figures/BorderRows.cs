using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Resolving;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// The rows of blocks of a pieced border as they are sewn, outer edge up: a side row, and a top and bottom row with what is in
/// the corners a little apart from its ends. Below each block stands its name: so they are told apart without color.
/// </summary>
public static class BorderRows
{
    private const double Gap = 5;

    private const double BetweenRows = 14;

    /// <summary>Higher than this a row tells no more.</summary>
    private const double HighestRow = 54;

    /// <summary>Seams closer than this on paper, in points, would turn the picture grey; then only blocks are outlined.</summary>
    private const double LeastSeamGap = 3.2;

    public static Picture Draw(Quilt quilt, Border border, Palette palette, FigureRoom room)
    {
        var names = new BlockNames(quilt);
        FigureStyle style = palette.Style;
        var draft = new Draft(style);
        double edge = style.Edge.Value,
            gap = Gap * style.Enlarged,
            head = style.Small.Value + 5;
        double width = border.Widths.Top.Inches.ToDouble();
        Row[] rows =
        [
            .. new[] { BorderSide.Left, BorderSide.Top }
                .Select(side => Row.Of(border, side))
                .OfType<Row>(),
        ];
        bool corners =
            border.Pieces.Any(p => p.Side == BorderSide.Corner)
            || border.Blocks.Any(b => b.Side == BorderSide.Corner);
        double longest = rows.Max(row => row.Length + (corners && row.IsTop ? 2 * width : 0));
        double scale = Math.Min(
            (room.Width.Value - edge - (corners ? 2 * gap : 0)) / longest,
            HighestRow * style.Enlarged / width
        );
        double whole = (longest * scale) + edge + (corners ? 2 * gap : 0);
        double y = edge / 2;
        foreach (Row row in rows)
        {
            double x = (whole - (row.Length * scale)) / 2;
            Caption(draft, row, x, y, row.Length * scale, whole);
            y += head;
            PaintBlocks(draft, row.Blocks, palette, scale, new Spot(x, y));
            double below = y + (width * scale);
            Name(draft, row.Blocks, names, scale, new Spot(x, below));
            if (corners && row.IsTop)
            {
                foreach (bool far in new[] { false, true })
                {
                    double at = far ? x + (row.Length * scale) + gap : x - gap - (width * scale);
                    PaintCorner(
                        draft,
                        border,
                        far,
                        palette,
                        names,
                        scale,
                        new Box(at, y, width * scale, width * scale)
                    );
                }
            }
            y = below + BelowNames(style) + (BetweenRows * style.Enlarged);
        }
        y -= BetweenRows * style.Enlarged;
        return new(
            draft.Finish(whole, y + (style.Small.Value * LabelSize.Descent) + 1),
            FigureWords.BorderRows(border)
        );
    }

    /// <summary>Blocks in color with their seams, each outlined.</summary>
    /// <param name="by">Where the origin of their coordinates lies.</param>
    internal static void PaintBlocks(
        Draft draft,
        IEnumerable<BorderBlock> blocks,
        Palette palette,
        double scale,
        Spot by
    )
    {
        FigureStyle style = draft.Style;
        var patches = new List<FlatQuilt.FlatPatch>();
        var outlines = new SeamLines();
        foreach (BorderBlock block in blocks)
        {
            BlockPlace place = block.Place;
            Box box = FlatQuilt.ToBox(place.Place);
            foreach (FlatQuilt.FlatPatch patch in FlatQuilt.PatchesOf(place.Block, place.Turn))
            {
                patches.Add(patch with { By = new Spot(box.X, box.Y) });
            }
            outlines.Add(box.Corners());
            draft.Board.Take(
                new Box(
                    (box.X * scale) + by.X,
                    (box.Y * scale) + by.Y,
                    box.Width * scale,
                    box.Height * scale
                )
            );
        }
        var seams = new SeamLines();
        double least = double.MaxValue;
        foreach (var fabric in patches.GroupBy(patch => patch.Fabric))
        {
            var lines = new SeamLines();
            foreach (FlatQuilt.FlatPatch patch in fabric)
            {
                lines.Add(patch.Corners, patch.By);
                seams.Add(patch.Corners, patch.By);
                Box box = Box.Of(patch.Corners);
                least = Math.Min(least, Math.Min(box.Width, box.Height));
            }
            FabricLook look = palette[fabric.Key];
            draft.Area(
                Paths.Closed(lines.Outline(), scale, by),
                look.Color,
                hatch: style.IsBlackOnly ? look.Hatch : null
            );
        }
        if (least * scale >= LeastSeamGap)
        {
            draft.Area(Paths.Lines(seams.Seams(), scale, by), stroke: style.Pen(style.Hair));
        }
        draft.Area(
            Paths.Lines(outlines.Seams(), scale, by),
            stroke: style.Pen(style.Edge) with
            {
                Cap = StrokeCap.Square,
            }
        );
    }

    // Which row it is at its left end, and in its middle which of its edges is the outer one.
    private static void Caption(
        Draft draft,
        Row row,
        double x,
        double y,
        double length,
        double whole
    )
    {
        FigureStyle style = draft.Style;
        double size = style.Small.Value;
        string name = row.IsTop ? FigureWords.TopRow : FigureWords.SideRow,
            outer = FigureWords.OuterEdge;
        double wide = LabelSize.Width(name, size);
        draft.Text(name, new Spot(x, y + (size / 2)), style.Small, Math.Min(wide, whole));
        double half = LabelSize.Width(outer, size) / 2,
            center = x + (length / 2);
        // A short row has no room for both.
        if (center - half - size > x + wide)
        {
            draft.Text(outer, new Spot(center - half, y + (size / 2)), style.Small, half * 2);
        }
    }

    private const double AboveName = 2.5;

    private static double BelowNames(FigureStyle style) =>
        AboveName + (style.Small.Value * LabelSize.Capital);

    // Below the middle of each block; where blocks are narrower than their names, as many as have room.
    private static void Name(
        Draft draft,
        IEnumerable<BorderBlock> blocks,
        BlockNames names,
        double scale,
        Spot by
    )
    {
        Points size = draft.Style.Small;
        double y = by.Y + AboveName + (size.Value * LabelSize.Capital / 2),
            taken = double.MinValue;
        foreach (BorderBlock block in blocks)
        {
            string name = names[block.Place.Block];
            double x = (FlatQuilt.ToBox(block.Place.Place).Center.X * scale) + by.X,
                half = LabelSize.Width(name, size.Value) / 2;
            if (x - half > taken)
            {
                draft.Label(name, new Spot(x, y), size, bold: true);
                taken = x + half + 1;
            }
        }
    }

    private static void PaintCorner(
        Draft draft,
        Border border,
        bool far,
        Palette palette,
        BlockNames names,
        double scale,
        Box place
    )
    {
        FigureStyle style = draft.Style;
        // Clockwise from the upper left: the first two are those of the top.
        if (
            border
                .Blocks.Where(b => b.Side == BorderSide.Corner)
                .Skip(far ? 1 : 0)
                .FirstOrDefault() is
            { } block
        )
        {
            Box box = FlatQuilt.ToBox(block.Place.Place);
            var by = new Spot(place.X - (box.X * scale), place.Y - (box.Y * scale));
            PaintBlocks(draft, [block], palette, scale, by);
            Name(draft, [block], names, scale, by with { Y = place.Bottom });
            return;
        }
        FabricLook look = palette[border.Pieces.First(p => p.Side == BorderSide.Corner).Fabric];
        draft.Area(
            Paths.Of(place),
            look.Color,
            style.Pen(style.Edge) with
            {
                Join = StrokeJoin.Miter,
            },
            style.IsBlackOnly ? look.Hatch : null
        );
        draft.Board.Take(place);
    }

    /// <summary>One row laid from the origin to the right, its outer edge up.</summary>
    private sealed record Row(bool IsTop, double Length, IReadOnlyList<BorderBlock> Blocks)
    {
        public static Row? Of(Border border, BorderSide side)
        {
            var blocks = new List<BorderBlock>();
            Quilting.Measures.Length at = Quilting.Measures.Length.Zero;
            foreach (BorderBlock block in border.Blocks.Where(b => b.Side == side))
            {
                BlockPlace place = block.Place;
                (Quilting.Measures.Length along, Quilting.Measures.Length high) =
                    side == BorderSide.Left
                        ? (place.Place.Height, place.Place.Width)
                        : (place.Place.Width, place.Place.Height);
                var lain = new Quilting.Geometry.Rect(
                    at,
                    Quilting.Measures.Length.Zero,
                    along,
                    high
                );
                blocks.Add(block with { Place = place with { Turn = block.Turn, Place = lain } });
                at += along;
            }
            return blocks.Count == 0
                ? null
                : new Row(side == BorderSide.Top, at.Inches.ToDouble(), blocks);
        }
    }
}
