using System.Collections.Immutable;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Techniques;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// The diagram of one step of a technique: pieces right side up in their fabrics or wrong side up, pale and lined; lines
/// to mark, sew and cut, each with its own dashes; press arrows; measures; an arrow from one state to the next.
/// </summary>
public static class UnitSketch
{
    private const double Gap = 10;
    private const double ThenRoom = 30;
    private const double AndRoom = 20;

    /// <summary>The shortest press arrow, in points.</summary>
    private const double LeastArrow = 9;

    /// <summary>Larger than this, in points per inch, a small unit looks clumsy beside its text.</summary>
    private const double LargestScale = 40;

    /// <summary>
    /// The scale at which all steps of a technique fit the room: draw them all to it, so that a maker sees pieces keep
    /// their size.
    /// </summary>
    /// <returns>Points on paper for an inch of fabric.</returns>
    public static Points ScaleFor(
        IEnumerable<Sketch> sketches,
        Func<string, string?> measure,
        Palette palette,
        FigureRoom room
    )
    {
        double least = LargestScale;
        foreach (Sketch sketch in sketches)
        {
            double low = 0,
                high = LargestScale;
            // Labels keep their size, so what fits is found by trying.
            for (int i = 0; i < 20; i++)
            {
                double middle = (low + high) / 2;
                Box box = Layout(sketch, measure, new Draft(palette.Style), middle).Whole;
                bool fits = box.Width <= room.Width.Value && box.Height <= room.Height.Value;
                (low, high) = fits ? (middle, high) : (low, middle);
            }
            least = Math.Min(least, low);
        }
        return Points.Of(least);
    }

    /// <param name="fabrics">Fabric key by role.</param>
    /// <param name="measure">What is printed for a measure of the recipe; null leaves it out.</param>
    /// <param name="scale">Points for an inch, from <see cref="ScaleFor"/>; null for the largest that fits.</param>
    public static Picture Draw(
        Sketch sketch,
        ImmutableArray<string> fabrics,
        Func<string, string?> measure,
        Palette palette,
        FigureRoom room,
        Points? scale = null
    )
    {
        double perInch = (scale ?? ScaleFor([sketch], measure, palette, room)).Value;
        var draft = new Draft(palette.Style);
        var layout = Layout(sketch, measure, draft, perInch);
        for (int i = 0; i < sketch.Frames.Length; i++)
        {
            if (layout.Links[i] is { } link)
            {
                PaintLink(draft, sketch.Frames[i].Link, link);
            }
            new FramePainter(
                draft,
                sketch.Frames[i],
                fabrics,
                measure,
                palette,
                perInch,
                layout.Origins[i]
            ).Paint();
            if (sketch.Frames[i].Count > 1)
            {
                draft.Label(
                    FigureWords.Times(sketch.Frames[i].Count),
                    layout.Counts[i],
                    palette.Style.Medium,
                    bold: true
                );
            }
        }
        return new(
            draft.Finish(Math.Max(1, layout.Whole.Width), Math.Max(1, layout.Whole.Height)),
            FigureWords.UnitSketch(sketch, fabrics, measure, palette)
        );
    }

    private sealed record Placing(Spot[] Origins, Spot?[] Links, Spot[] Counts, Box Whole);

    // Frames side by side, their shapes centered on one line.
    private static Placing Layout(
        Sketch sketch,
        Func<string, string?> measure,
        Draft draft,
        double scale
    )
    {
        int count = sketch.Frames.Length;
        var origins = new Spot[count];
        var links = new Spot?[count];
        var counts = new Spot[count];
        var rooms = new Box[count];
        double above = 0,
            below = 0;
        for (int i = 0; i < count; i++)
        {
            Box shape = ShapeBox(sketch.Frames[i], scale);
            rooms[i] = RoomOf(sketch.Frames[i], measure, draft, scale);
            above = Math.Max(above, shape.Center.Y - rooms[i].Y);
            double down = rooms[i].Bottom - shape.Center.Y;
            below = Math.Max(below, down + CountRoom(sketch.Frames[i], draft));
        }
        double x = 0;
        for (int i = 0; i < count; i++)
        {
            SketchFrame frame = sketch.Frames[i];
            if (i > 0)
            {
                double width = frame.Link switch
                {
                    FrameLink.Then => ThenRoom,
                    FrameLink.And => AndRoom,
                    _ => Gap,
                };
                links[i] = new Spot(x + (width / 2), above);
                x += width;
            }
            Box shape = ShapeBox(frame, scale);
            origins[i] = new Spot(x - rooms[i].X, above - shape.Center.Y);
            counts[i] = new Spot(
                origins[i].X + shape.Center.X,
                origins[i].Y + rooms[i].Bottom + (CountRoom(frame, draft) / 2) + 1
            );
            x += rooms[i].Width;
        }
        return new(origins, links, counts, new Box(0, 0, x, above + below));
    }

    private static double CountRoom(SketchFrame frame, Draft draft) =>
        frame.Count > 1 ? draft.Style.Medium.Value + 3 : 0;

    private static Box ShapeBox(SketchFrame frame, double scale)
    {
        Box box = FlatQuilt.ToBox(frame.Bounds);
        return new(box.X * scale, box.Y * scale, box.Width * scale, box.Height * scale);
    }

    // Shapes, their edges, and the dimensions outside.
    private static Box RoomOf(
        SketchFrame frame,
        Func<string, string?> measure,
        Draft draft,
        double scale
    )
    {
        Box room = ShapeBox(frame, scale).Grown(draft.Style.Bold.Value / 2);
        foreach (SketchLine line in frame.Lines)
        {
            if (
                line.Kind == SketchLineKind.Dimension
                && line.Measure is not null
                && measure(line.Measure) is { Length: > 0 } text
            )
            {
                room = room.With(
                    draft.DimensionBox(
                        FlatQuilt.ToSpot(line.From) * scale,
                        FlatQuilt.ToSpot(line.To) * scale,
                        text
                    )
                );
            }
        }
        return room;
    }

    private static void PaintLink(Draft draft, FrameLink link, Spot at)
    {
        FigureStyle style = draft.Style;
        switch (link)
        {
            case FrameLink.Then:
                draft.Arrow(at - new Spot(9, 0), at + new Spot(9, 0), style.Pen(style.Bold), 6);
                break;
            case FrameLink.And:
                draft.Lines(
                    [
                        (at - new Spot(4, 0), at + new Spot(4, 0)),
                        (at - new Spot(0, 4), at + new Spot(0, 4)),
                    ],
                    style.Pen(style.Bold)
                );
                break;
            default:
                break;
        }
    }

    /// <summary>Draws one frame.</summary>
    private sealed class FramePainter(
        Draft draft,
        SketchFrame frame,
        ImmutableArray<string> fabrics,
        Func<string, string?> measure,
        Palette palette,
        double scale,
        Spot origin
    )
    {
        private readonly FigureStyle _style = draft.Style;
        private readonly Spot[][] _shapes =
        [
            .. frame.Shapes.Select(s =>
                FlatQuilt.ToSpots(s.Shape).Select(p => (p * scale) + origin).ToArray()
            ),
        ];

        public void Paint()
        {
            for (int i = 0; i < _shapes.Length; i++)
            {
                PaintShape(frame.Shapes[i], _shapes[i]);
            }
            foreach (SketchLine line in frame.Lines)
            {
                PaintLine(line);
            }
            foreach (SketchLabel label in frame.Labels)
            {
                Spot at = Place(FlatQuilt.ToSpot(label.At));
                if (label.Text is { } number)
                {
                    // On a disc, as the order of sewing is told everywhere: no part of a fabric's letter.
                    draft.Disc(number, at);
                }
                else if (label.Measure is { } name && measure(name) is { Length: > 0 } text)
                {
                    draft.Label(text, at, _style.Medium, ink: LetterInkAt(at), plate: ColorAt(at));
                }
            }
            for (int i = 0; i < _shapes.Length; i++)
            {
                WriteLetter(i);
            }
        }

        private Spot Place(Spot inches) => (inches * scale) + origin;

        private FabricLook? LookOf(SketchShape shape) =>
            shape.Role >= 0 && shape.Role < fabrics.Length ? palette[fabrics[shape.Role]] : null;

        private Ink ColorOf(SketchShape shape) =>
            LookOf(shape) is { } look
                ? shape.Side == FabricSide.Right
                    ? look.Color
                    : look.WrongSide
                : Ink.White;

        private void PaintShape(SketchShape shape, Spot[] corners)
        {
            HatchFill? hatch = null;
            if (LookOf(shape) is { } look)
            {
                // In black only, blank is the wrong side: every right side has its hatch.
                hatch =
                    _style.IsBlackOnly ? (shape.Side == FabricSide.Right ? look.Hatch : null)
                    : shape.Side == FabricSide.Wrong ? new HatchFill(WrongSide, WrongInk(look))
                    : null;
            }
            draft.Area(Paths.Closed(corners), ColorOf(shape), _style.Pen(_style.Edge), hatch);
        }

        private static Ink WrongInk(FabricLook look) => look.WrongSide.MixedWith(Ink.Black, 0.28);

        private void PaintLine(SketchLine line)
        {
            Spot from = Place(FlatQuilt.ToSpot(line.From)),
                to = Place(FlatQuilt.ToSpot(line.To));
            if (line.Kind == SketchLineKind.Dimension)
            {
                if (line.Measure is not null && measure(line.Measure) is { Length: > 0 } text)
                {
                    draft.Dimension(from, to, text);
                }
                return;
            }
            if (line.Kind == SketchLineKind.Press)
            {
                // Tiny units still get an arrow that can be seen.
                double length = (to - from).Length;
                Spot reach =
                    (to - from) * (Math.Max(length, LeastArrow) / Math.Max(length, 1e-9) / 2);
                Spot middle = Spot.Between(from, to, 0.5);
                draft.CasedArrow(middle - reach, middle + reach);
                return;
            }
            (Ink ink, bool mixed) = InkAlong(from, to);
            Stroke pen = line.Kind switch
            {
                SketchLineKind.Marked => SketchPens.Marked(_style, ink),
                SketchLineKind.Sewn => SketchPens.Sewn(_style, ink),
                SketchLineKind.Cut => SketchPens.Cut(_style, ink),
                _ => SketchPens.Fold(_style, ink),
            };
            if (mixed)
            {
                // A pale casing keeps the line in sight on light and dark alike.
                draft.Lines([(from, to)], _style.Pen(pen.Width + Points.Of(1.4), Ink.White));
            }
            draft.Lines([(from, to)], pen);
            draft.Board.TakeLine(from, to, 1.5);
        }

        // The ink that reads on what lies under a line, and whether light and dark alternate there.
        private (Ink Ink, bool Mixed) InkAlong(Spot from, Spot to)
        {
            Ink first = LetterInkAt(Spot.Between(from, to, 0.5));
            bool mixed = new[] { 0.08, 0.3, 0.7, 0.92 }.Any(share =>
                LetterInkAt(Spot.Between(from, to, share)) != first
            );
            return mixed ? (_style.Ink, true) : (first, false);
        }

        private Ink LetterInkAt(Spot place) =>
            ColorAt(place).ReadableOn() == Ink.White ? Ink.White : _style.Ink;

        private Ink ColorAt(Spot place)
        {
            for (int i = _shapes.Length - 1; i >= 0; i--)
            {
                if (LabelRoom.Holds(_shapes[i], place))
                {
                    return ColorOf(frame.Shapes[i]);
                }
            }
            return Ink.White;
        }

        // The fabric's letter, where it covers neither a line nor a piece that lies on top.
        private void WriteLetter(int index)
        {
            SketchShape shape = frame.Shapes[index];
            if (LookOf(shape) is not { } look)
            {
                return;
            }
            double size = _style.Small.Value,
                width = LabelSize.Width(look.Key, size) + 1.6,
                height = (size * LabelSize.Capital) + 1.6;
            Box bounds = Box.Of(_shapes[index]);
            Spot middle = LabelRoom.CentroidOf(_shapes[index]);
            var candidates = new List<(double Far, Spot At)> { (0, middle) };
            const int grid = 9;
            for (int row = 0; row < grid; row++)
            {
                for (int column = 0; column < grid; column++)
                {
                    var at = new Spot(
                        bounds.X + (bounds.Width * (column + 0.5) / grid),
                        bounds.Y + (bounds.Height * (row + 0.5) / grid)
                    );
                    candidates.Add(((at - middle).Length, at));
                }
            }
            foreach ((_, Spot at) in candidates.OrderBy(c => c.Far))
            {
                Box box = Box.Around(at, width, height);
                if (
                    LabelRoom.SlackOf(_shapes[index], at, width, height) >= 0
                    && draft.Board.IsFree(box)
                    && !CoveredAbove(index, at, width, height)
                )
                {
                    Ink color = ColorOf(shape);
                    draft.Label(
                        look.Key,
                        at,
                        _style.Small,
                        bold: true,
                        color.ReadableOn() == Ink.White ? Ink.White : _style.Ink,
                        plate: color
                    );
                    return;
                }
            }
        }

        private bool CoveredAbove(int index, Spot at, double width, double height)
        {
            for (int i = index + 1; i < _shapes.Length; i++)
            {
                if (LabelRoom.Touches(_shapes[i], Box.Around(at, width, height)))
                {
                    return true;
                }
            }
            return false;
        }

        private static readonly Hatch WrongSide = new(
            "wrong side",
            [new HatchLayer.Lines(-45, 2.6, 0.35)]
        );
    }
}
