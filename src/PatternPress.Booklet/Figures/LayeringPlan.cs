using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Finishing;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Tables;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// The three layers of a quilt floating one above the other: backing wrong side up, batting, quilt top right side up.
/// </summary>
public static class LayeringPlan
{
    // Depth runs to the lower left; a sheet lies flat and is seen from the front.
    private const double Slant = -0.34;
    private const double Squash = 0.46;

    public static Picture Draw(
        Quilt quilt,
        BackingPlan? backing,
        BattingPlan? batting,
        Palette palette,
        FigureRoom room
    ) =>
        Draw(
            quilt,
            backing is null ? null : BackingLayout.CellOf(backing),
            batting is null
                ? null
                : new BattingCell(batting.Width, batting.Height, batting.Overhang, batting.Package),
            palette,
            room
        );

    /// <param name="backing">Null where the pattern plans none: drawn a little larger than the top.</param>
    public static Picture Draw(
        Quilt quilt,
        BackingCell? backing,
        BattingCell? batting,
        Palette palette,
        FigureRoom room
    )
    {
        FigureStyle style = palette.Style;
        var draft = new Draft(style);
        double width = quilt.Width.Inches.ToDouble(),
            height = quilt.Height.Inches.ToDouble();
        (double Width, double Height) below = SizeOf(
            backing?.Width,
            backing?.Height,
            width,
            height,
            8
        );
        (double Width, double Height) middle = SizeOf(
            batting?.Width,
            batting?.Height,
            width,
            height,
            8
        );
        // Batting is laid out no larger than the backing, so that all three edges show.
        middle = (Math.Min(middle.Width, below.Width), Math.Min(middle.Height, below.Height));
        double edge = style.Edge.Value;
        var names = FigureWords.Layers(quilt, backing, batting);
        double words = names.Max(n =>
            Math.Max(
                LabelSize.Width(n.Name, style.Medium.Value),
                LabelSize.Width(n.Detail, style.Small.Value)
            )
        );
        double widest = below.Width,
            deepest = below.Height;
        const double lift = 0.34;
        double scale = Math.Min(
            (room.Width.Value - words - 14 - (2 * edge)) / (widest + (deepest * -Slant)),
            (room.Height.Value - (2 * edge)) / (deepest * Squash * (1 + (2 * lift)))
        );
        double rise = deepest * Squash * lift * scale;
        var center = new Spot(
            edge + ((widest + (deepest * -Slant)) * scale / 2),
            edge + (2 * rise) + (deepest * Squash * scale / 2)
        );
        var sheets = new[]
        {
            (Size: below, Place: center),
            (Size: middle, Place: center - new Spot(0, rise)),
            (Size: (width, height), Place: center - new Spot(0, 2 * rise)),
        };
        // Names from the top down, each clear of the one above.
        double line = (style.Medium.Value + style.Small.Value) * 1.4;
        var levels = new double[sheets.Length];
        for (int i = sheets.Length - 1; i >= 0; i--)
        {
            double own = sheets[i].Place.Y + (Squash * sheets[i].Size.Item2 * scale * 0.25);
            levels[i] =
                i == sheets.Length - 1
                    ? Math.Max(own, line / 2)
                    : Math.Max(own, levels[i + 1] + line);
        }
        for (int i = 0; i < sheets.Length; i++)
        {
            ((double w, double h), Spot place) = sheets[i];
            Transform lay = new(
                scale,
                0,
                Slant * scale,
                Squash * scale,
                place.X - (scale * ((w / 2) + (Slant * h / 2))),
                place.Y - (scale * Squash * h / 2)
            );
            if (i > 0)
            {
                Guides(draft, sheets[i - 1], sheets[i], scale);
            }
            PaintSheet(draft, quilt, i, w, h, lay, backing, palette);
            Name(
                draft,
                names[i],
                w,
                h,
                lay,
                edge + ((widest + (deepest * -Slant)) * scale) + 10,
                levels[i]
            );
        }
        return new(
            draft.Finish(
                edge + ((widest + (deepest * -Slant)) * scale) + 14 + words + edge,
                Math.Max(
                    (2 * edge) + (2 * rise) + (deepest * Squash * scale),
                    levels[0] + (line / 2)
                )
            ),
            FigureWords.LayeringPlan(quilt, backing, batting)
        );
    }

    private static (double Width, double Height) SizeOf(
        Quilting.Measures.Length? width,
        Quilting.Measures.Length? height,
        double top,
        double down,
        double more
    ) => (width?.Inches.ToDouble() ?? (top + more), height?.Inches.ToDouble() ?? (down + more));

    private static void PaintSheet(
        Draft draft,
        Quilt quilt,
        int layer,
        double width,
        double height,
        Transform lay,
        BackingCell? backing,
        Palette palette
    )
    {
        FigureStyle style = draft.Style;
        VectorPath sheet = Round(VectorPath.Rectangle(0, 0, width, height).Transformed(lay));
        Stroke pen = style.Pen(style.Edge);
        switch (layer)
        {
            case 0:
                FabricLook? look = backing?.Fabric is { } key ? palette[key] : null;
                draft.Area(sheet, look?.WrongSide ?? style.Ground, pen);
                break;
            case 1:
                // Batting: white, with the small marks that stand for loft.
                draft.Area(
                    sheet,
                    Ink.White,
                    pen,
                    new HatchFill(
                        new Hatch(
                            "batting",
                            [
                                new HatchLayer.Lines(20, 4.5, 0.4)
                                {
                                    Dashes = [1.6, 5],
                                    Stagger = 3.1,
                                },
                                new HatchLayer.Lines(-40, 6, 0.4)
                                {
                                    Dashes = [1.4, 6.2],
                                    Stagger = 2.3,
                                },
                            ]
                        ),
                        style.Quiet
                    )
                );
                break;
            default:
                var flat = FlatQuilt.Of(quilt);
                foreach (
                    (string fabric, VectorPath path) in QuiltPicture.FabricPaths(
                        flat,
                        palette,
                        1,
                        default
                    )
                )
                {
                    FabricLook of = palette[fabric];
                    draft.Area(
                        Round(path.Transformed(lay)),
                        of.Color,
                        hatch: style.IsBlackOnly ? of.Hatch : null
                    );
                }
                draft.Area(sheet, stroke: pen);
                break;
        }
    }

    // Thin upright lines between the corners of two sheets: they belong one above the other.
    private static void Guides(
        Draft draft,
        ((double Width, double Height) Size, Spot Place) low,
        ((double Width, double Height) Size, Spot Place) high,
        double scale
    )
    {
        var lines = new List<(Spot, Spot)>();
        foreach ((int across, int down) in new[] { (-1, 1), (1, 1), (1, -1) })
        {
            double w = high.Size.Width / 2 * across,
                h = high.Size.Height / 2 * down;
            var from = new Spot(w + (Slant * h), Squash * h) * scale;
            lines.Add((low.Place + from, high.Place + from));
        }
        draft.Lines(
            lines,
            draft.Style.Pen(draft.Style.Hair, draft.Style.Quiet) with
            {
                Dashes = [Points.Of(1.5), Points.Of(2)],
                Cap = StrokeCap.Butt,
            }
        );
    }

    private static void Name(
        Draft draft,
        (string Name, string Detail) name,
        double width,
        double height,
        Transform lay,
        double x,
        double y
    )
    {
        FigureStyle style = draft.Style;
        XY edge = lay.Apply(new(width, height * 0.75));
        var from = new Spot(x - 4, y);
        draft.Lines([(from, new Spot(edge.X, edge.Y))], style.Pen(style.Hair, style.Quiet));
        double lead = (style.Medium.Value + style.Small.Value) / 2 * 0.62;
        draft.Text(
            name.Name,
            new Spot(x, y - lead),
            style.Medium,
            LabelSize.Width(name.Name, style.Medium.Value),
            bold: true
        );
        draft.Text(
            name.Detail,
            new Spot(x, y + lead),
            style.Small,
            LabelSize.Width(name.Detail, style.Small.Value)
        );
    }

    private static VectorPath Round(VectorPath path)
    {
        var rounded = new PathBuilder();
        int next = 0;
        foreach (PathVerb verb in path.Verbs)
        {
            switch (verb)
            {
                case PathVerb.Move:
                    rounded.MoveTo(Two(path.Points[next++]));
                    break;
                case PathVerb.Line:
                    rounded.LineTo(Two(path.Points[next++]));
                    break;
                case PathVerb.Close:
                    rounded.Close();
                    break;
                default:
                    rounded.CurveTo(
                        Two(path.Points[next++]),
                        Two(path.Points[next++]),
                        Two(path.Points[next++])
                    );
                    break;
            }
        }
        return rounded.ToPath();

        static XY Two(XY p) => new(Math.Round(p.X, 2), Math.Round(p.Y, 2));
    }
}
