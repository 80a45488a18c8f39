using System.Globalization;
using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// The mitred corner of a binding in three pictures: sew and stop a seam's width from the corner; fold the strip away
/// at 45°; fold it back along the next edge and sew on from the edge.
/// </summary>
public static class BindingCorner
{
    // All in inches of the quilt: how much of it is shown, how far the strip hangs over.
    private const double Shown = 3.6;
    private const double Over = 1.3;
    private const double Between = 12;

    /// <param name="binding">The fabric of the binding.</param>
    public static Picture Draw(FabricLook binding, House house, Palette palette, FigureRoom room)
    {
        FigureStyle style = palette.Style;
        var draft = new Draft(style);
        double seam = house.Seam.Inches.ToDouble(),
            wide = house.BindingWidth.Inches.ToDouble() / 2;
        double disc = (2 * draft.DiscRadius("0")) + 4,
            edge = style.Bold.Value;
        // The second picture is wider by what hangs over to the right, the first higher by what hangs down.
        double scale = Math.Min(
            (room.Width.Value - (2 * Between) - (2 * edge)) / ((3 * Shown) + Over),
            (room.Height.Value - disc - (2 * edge)) / (Shown + Over)
        );
        double x = edge;
        for (int step = 1; step <= 3; step++)
        {
            var corner = new Corner(draft, binding, new Spot(x, disc), scale, wide, seam);
            corner.Paint(step);
            if (step == 1)
            {
                corner.MarkStop(FigureWords.Measure(house.Seam, house));
            }
            draft.Disc(
                step.ToString(CultureInfo.InvariantCulture),
                new Spot(x + (Shown * scale / 2), draft.DiscRadius("0") + 0.5)
            );
            x += ((Shown + (step == 2 ? Over : 0)) * scale) + Between;
        }
        return new(
            draft.Finish(x - Between + edge, disc + ((Shown + Over) * scale) + edge),
            FigureWords.BindingCorner(house)
        );
    }

    /// <summary>One corner of the quilt, lower right; the strip comes down the right edge.</summary>
    private sealed class Corner(
        Draft draft,
        FabricLook binding,
        Spot at,
        double scale,
        double wide,
        double seam
    )
    {
        private FigureStyle Style => draft.Style;

        public void Paint(int step)
        {
            // The quilt goes on to the left and above: no edge is drawn there.
            draft.Area(Paths.Of(new Box(at.X, at.Y, Shown * scale, Shown * scale)), Style.Ground);
            draft.Area(
                Paths.Open(Place(0, Shown), Place(Shown, Shown), Place(Shown, 0)),
                stroke: Style.Pen(Style.Edge)
            );
            double inner = Shown - wide;
            switch (step)
            {
                case 1:
                    Strip(
                        Place(inner, 0),
                        Place(Shown, 0),
                        Place(Shown, Shown + Over),
                        Place(inner, Shown + Over)
                    );
                    Sew(Place(Shown - seam, 0), Place(Shown - seam, Shown - seam), arrow: true);
                    break;
                case 2:
                    Strip(
                        Place(inner, 0),
                        Place(Shown, 0),
                        Place(Shown, Shown),
                        Place(inner, inner)
                    );
                    Sew(Place(Shown - seam, 0), Place(Shown - seam, inner), arrow: false);
                    Strip(
                        Place(inner, inner),
                        Place(Shown + Over, inner),
                        Place(Shown + Over, Shown),
                        Place(Shown, Shown)
                    );
                    draft.Lines(
                        [(Place(inner, inner), Place(Shown, Shown))],
                        Style.Pen(Style.Bold)
                    );
                    break;
                default:
                    Strip(
                        Place(inner, 0),
                        Place(Shown, 0),
                        Place(Shown, Shown),
                        Place(inner, Shown)
                    );
                    Sew(Place(Shown - seam, 0), Place(Shown - seam, inner), arrow: false);
                    Strip(
                        Place(0, inner),
                        Place(Shown, inner),
                        Place(Shown, Shown),
                        Place(0, Shown)
                    );
                    // The fold lies flush with the edge; the mitre is hidden below.
                    draft.Lines(
                        [(Place(Shown, inner), Place(Shown, Shown))],
                        Style.Pen(Style.Bold)
                    );
                    draft.Lines(
                        [(Place(inner, inner), Place(Shown, Shown))],
                        Style.Pen(Style.Hair, Letter) with
                        {
                            Dashes = [Points.Of(1.2), Points.Of(1.6)],
                            Cap = StrokeCap.Butt,
                        }
                    );
                    Sew(Place(Shown, Shown - seam), Place(0, Shown - seam), arrow: true);
                    break;
            }
        }

        /// <summary>A dot where the first seam stops and the distance to the edge.</summary>
        public void MarkStop(string measure)
        {
            Spot stop = Place(Shown - seam, Shown - seam);
            draft.Area(VectorPath.Circle(Paths.At(stop), 1.5), Letter);
            double width = LabelSize.Width(measure, Style.Small.Value);
            Spot from = Place(Shown - wide, Shown) + new Spot(-4, 6);
            draft.Label(measure, from - new Spot(width / 2, 0) + new Spot(0, 3), Style.Small);
            draft.Lines([(from + new Spot(1, 2), stop)], Style.Pen(Style.Hair, Letter));
        }

        private Ink Letter => binding.LetterInk;

        private Spot Place(double x, double y) => at + (new Spot(x, y) * scale);

        // Where the strip goes on, at the edge of the picture, it has no edge.
        private void Strip(params Spot[] corners)
        {
            draft.Area(
                Paths.Closed(corners),
                binding.Color,
                hatch: Style.IsBlackOnly ? binding.Hatch : null
            );
            var edges = new List<(Spot, Spot)>();
            for (int i = 0; i < corners.Length; i++)
            {
                Spot a = corners[i],
                    b = corners[(i + 1) % corners.Length];
                bool goesOn = (a.Y == b.Y && a.Y == at.Y) || (a.X == b.X && a.X == at.X);
                if (!goesOn)
                {
                    edges.Add((a, b));
                }
            }
            draft.Lines(edges, Style.Pen(Style.Edge));
        }

        private void Sew(Spot from, Spot to, bool arrow)
        {
            Stroke pen = SketchPens.Sewn(Style, Letter);
            draft.Lines([(from, to)], pen);
            if (arrow)
            {
                Spot along = (to - from) * (1 / (to - from).Length);
                Spot tip = Spot.Between(from, to, 0.55);
                draft.Arrow(tip - (along * 6), tip, Style.Pen(Style.Edge, Letter), 5);
            }
        }
    }
}
