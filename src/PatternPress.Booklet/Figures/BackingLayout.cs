using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Finishing;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>The backing: its panels and seams, the quilt dashed upon it, and how far it reaches beyond.</summary>
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
        }
        Box top = Box.Around(
            backing.Center,
            quilt.Width.Inches.ToDouble() * scale,
            quilt.Height.Inches.ToDouble() * scale
        );
        draft.Area(
            Paths.Of(top),
            stroke: style.Pen(style.Edge) with
            {
                Dashes = [Points.Of(4), Points.Of(2.5)],
                Cap = StrokeCap.Butt,
            }
        );
        Label(draft, quilt, plan, look, backing, top, across, panel);
        return new(
            draft.Finish(
                backing.Right + measure + (edge / 2),
                backing.Bottom + measure + (edge / 2)
            ),
            FigureWords.BackingLayout(quilt, plan)
        );
    }

    private static void Label(
        Draft draft,
        Quilt quilt,
        BackingCell plan,
        FabricLook? look,
        Box backing,
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
        draft.TryLabel(
            FigureWords.QuiltTop,
            [
                top.Center + new Spot(0, 8),
                top.Center + new Spot(0, -8),
                top.Center + new Spot(0, 20),
            ],
            style.Medium,
            plate: ground,
            within: top
        );
        for (int i = 0; i < plan.Panels; i++)
        {
            Spot middle = across
                ? new(backing.Center.X, backing.Y + ((i + 0.5) * panel))
                : new(backing.X + ((i + 0.5) * panel), backing.Center.Y);
            Box room = across
                ? new(backing.X, backing.Y + (i * panel), backing.Width, panel)
                : new(backing.X + (i * panel), backing.Y, panel, backing.Height);
            string text = FigureWords.Panel(i + 1);
            draft.TryLabel(
                text,
                [
                    middle,
                    middle - new Spot(0, 14),
                    middle + new Spot(0, 14),
                    middle - new Spot(0, 28),
                ],
                style.Medium,
                bold: true,
                plate: ground,
                within: room
            );
        }
        // Short arrows over the overhang; the measure stands inside, where there is room for it.
        string overhang = FigureWords.Measure(plan.Overhang, quilt.House);
        double words = LabelSize.Width(overhang, style.Small.Value);
        double x = top.X + (top.Width * 0.22),
            y = top.Y + (top.Height * 0.2);
        Overhang(new Spot(x, backing.Y), new Spot(x, top.Y));
        Overhang(new Spot(backing.X, y), new Spot(top.X, y));
        foreach (
            Spot place in new[]
            {
                new Spot(x, top.Y + style.Small.Value),
                new Spot(top.X + 3 + (words / 2), y),
            }
        )
        {
            draft.TryLabel(overhang, [place], style.Small, plate: ground, within: top);
        }

        void Overhang(Spot from, Spot to) =>
            draft.Marks.Add(
                new Mark.Line(Paths.At(from), Paths.At(to), style.Pen(style.Seam))
                {
                    Start = Arrowhead.Filled,
                    End = Arrowhead.Filled,
                    HeadSize = Points.Of(Math.Min(3, (to - from).Length * 0.4)),
                }
            );
    }
}
