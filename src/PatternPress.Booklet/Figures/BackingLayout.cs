using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Finishing;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// The backing of one size at true scale: its panels as they are sewn, the line to trim it to, the quilt top upon it, and
/// how far the trimmed backing reaches beyond.
/// </summary>
public static class BackingLayout
{
    public static Picture Draw(Quilt quilt, BackingPlan plan, Palette palette, FigureRoom room) =>
        Draw(quilt, CellOf(plan), palette, room);

    internal static BackingCell CellOf(BackingPlan plan) =>
        new(
            plan.Fabric,
            plan.Width,
            plan.Height,
            plan.Overhang,
            plan.FabricWidth,
            plan.Panels,
            plan.PanelLength,
            plan.Seams,
            plan.JoinLoss
        );

    /// <summary>Width across the sewn panels.</summary>
    internal static Length SewnAcross(BackingCell plan) =>
        (plan.FabricWidth * plan.Panels) - (plan.JoinLoss * (plan.Panels - 1));

    public static Picture Draw(Quilt quilt, BackingCell plan, Palette palette, FigureRoom room)
    {
        FigureStyle style = palette.Style;
        var draft = new Draft(style);
        bool across = plan.Seams is BackingSeams.Level or BackingSeams.NoneAcross;
        double along = plan.PanelLength.Inches.ToDouble(),
            sewn = SewnAcross(plan).Inches.ToDouble();
        (double width, double height) = across ? (along, sewn) : (sewn, along);
        double measure = draft.DimensionRoom,
            edge = style.Edge.Value;
        double scale = Math.Min(
            (room.Width.Value - measure - edge) / width,
            (room.Height.Value - measure - edge) / height
        );
        var backing = new Box(edge / 2, edge / 2, width * scale, height * scale);
        FabricLook? look = plan.Fabric is null ? null : palette[plan.Fabric];
        draft.Area(
            Paths.Of(backing),
            look?.WrongSide ?? style.Ground,
            style.Pen(style.Edge) with
            {
                Join = StrokeJoin.Miter,
            }
        );
        double panel = (across ? backing.Height : backing.Width) / plan.Panels;
        for (int i = 1; i < plan.Panels; i++)
        {
            (Spot from, Spot to) = across
                ? (
                    new Spot(backing.X, backing.Y + (i * panel)),
                    new Spot(backing.Right, backing.Y + (i * panel))
                )
                : (
                    new Spot(backing.X + (i * panel), backing.Y),
                    new Spot(backing.X + (i * panel), backing.Bottom)
                );
            draft.Lines([(from, to)], style.Pen(style.Bold));
            draft.Board.TakeLine(from, to, style.Bold.Value + 2);
        }
        // Where nothing is cut off, the line to trim to still shows beside the edge of the panels.
        Box trimmed = Box.Around(
            backing.Center,
            Math.Min(backing.Width - (2 * BesideEdge), plan.Width.Inches.ToDouble() * scale),
            Math.Min(backing.Height - (2 * BesideEdge), plan.Height.Inches.ToDouble() * scale)
        );
        Outline(draft, trimmed, SketchPens.Cut(style, style.Ink));
        Box top = Box.Around(
            backing.Center,
            Math.Min(trimmed.Width, quilt.House.Unfinished(quilt.Width).Inches.ToDouble() * scale),
            Math.Min(trimmed.Height, quilt.House.Unfinished(quilt.Height).Inches.ToDouble() * scale)
        );
        Outline(
            draft,
            top,
            style.Pen(style.Edge) with
            {
                Dashes = [Points.Of(4), Points.Of(2.5)],
                Cap = StrokeCap.Butt,
            }
        );
        Label(draft, quilt, plan, look, backing, trimmed, top, across, panel);
        return new(
            draft.Finish(
                backing.Right + measure + (edge / 2),
                backing.Bottom + measure + (edge / 2)
            ),
            FigureWords.BackingLayout(quilt, plan)
        );
    }

    /// <summary>How far the line to trim to keeps from the edge of the panels, in points.</summary>
    private const double BesideEdge = 1.8;

    private static void Outline(Draft draft, Box box, Stroke pen)
    {
        draft.Area(Paths.Of(box), stroke: pen);
        Spot[] corners = box.Corners();
        for (int i = 0; i < corners.Length; i++)
        {
            draft.Board.TakeLine(corners[i], corners[(i + 1) % corners.Length], 2);
        }
    }

    private static void Label(
        Draft draft,
        Quilt quilt,
        BackingCell plan,
        FabricLook? look,
        Box backing,
        Box trimmed,
        Box top,
        bool across,
        double panel
    )
    {
        FigureStyle style = draft.Style;
        Ink ground = look?.WrongSide ?? style.Ground;
        draft.Dimension(
            new Spot(backing.Right, backing.Bottom),
            new Spot(backing.X, backing.Bottom),
            FigureWords.Measure(across ? plan.PanelLength : SewnAcross(plan), quilt.House)
        );
        draft.Dimension(
            new Spot(backing.Right, backing.Y),
            new Spot(backing.Right, backing.Bottom),
            FigureWords.Measure(across ? SewnAcross(plan) : plan.PanelLength, quilt.House)
        );
        // Where the backing is trimmed it reaches beyond the top by its overhang on every side: the measure stands inside.
        string overhang = FigureWords.Measure(plan.Overhang, quilt.House);
        double words = LabelSize.Width(overhang, style.Small.Value);
        foreach (double share in new[] { 0.8, 0.7, 0.9, 0.25, 0.15, 0.5 })
        {
            Spot outer = new(trimmed.X, top.Y + (top.Height * share)),
                inner = new(top.X, outer.Y);
            if (
                inner.X - outer.X < 1
                || !draft.TryLabel(
                    overhang,
                    [new Spot(top.X + 3.5 + (words / 2), outer.Y)],
                    style.Small,
                    plate: ground,
                    within: top
                )
            )
            {
                continue;
            }
            draft.Marks.Add(
                new Mark.Line(Paths.At(outer), Paths.At(inner), style.Pen(style.Seam))
                {
                    Start = Arrowhead.Filled,
                    End = Arrowhead.Filled,
                    HeadSize = Points.Of(Math.Min(3, (inner - outer).Length * 0.4)),
                }
            );
            break;
        }
        // Before the panels, which make do with a number.
        if (!draft.TryLabel(FigureWords.QuiltTop, Lower(top), style.Medium, within: top))
        {
            draft.TryLabel(FigureWords.QuiltTop, Places(top), style.Small, within: top);
        }
        for (int i = 0; i < plan.Panels; i++)
        {
            Box room = across
                ? new(backing.X, backing.Y + (i * panel), backing.Width, panel)
                : new(backing.X + (i * panel), backing.Y, panel, backing.Height);
            foreach (string text in new[] { FigureWords.Panel(i + 1), FigureWords.Numeral(i + 1) })
            {
                if (draft.TryLabel(text, Places(room), style.Medium, bold: true, within: room))
                {
                    break;
                }
            }
        }
        static IEnumerable<Spot> Lower(Box room) =>
            Places(room).OrderByDescending(place => place.Y > room.Center.Y);

        // A grid of places, those near the middle first: one of them is clear of seams and outlines.
        static IEnumerable<Spot> Places(Box room)
        {
            const int steps = 12;
            return from y in Enumerable.Range(1, steps - 1)
                from x in Enumerable.Range(1, steps - 1)
                let place = new Spot(
                    room.X + (room.Width * x / steps),
                    room.Y + (room.Height * y / steps)
                )
                orderby (place - room.Center).Length
                select place;
        }
    }
}
