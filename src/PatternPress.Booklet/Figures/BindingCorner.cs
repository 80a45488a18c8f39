using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>What is done at a corner of the binding, in order.</summary>
public enum CornerTurn
{
    /// <summary>The seam stops before the corner.</summary>
    Stop = 1,

    /// <summary>The strip is folded up, away from the quilt.</summary>
    Up,

    /// <summary>The strip is folded down along the next edge.</summary>
    Down,
}

/// <summary>
/// The mitred corner of a binding in three pictures, the edge to be sewn next on the right: sew along the upper edge and stop
/// a seam's width from the corner; fold the strip up at 45°; fold it down along the right edge and sew on from the fold.
/// </summary>
public static class BindingCorner
{
    // All in inches of the quilt: how much of it is shown, how far the strip hangs over.
    private const double Shown = 3.6;
    private const double Over = 1.3;

    /// <param name="binding">The fabric of the binding.</param>
    /// <param name="turn">Which of the three pictures.</param>
    public static Picture Draw(
        FabricLook binding,
        House house,
        CornerTurn turn,
        Palette palette,
        FigureRoom room
    )
    {
        FigureStyle style = palette.Style;
        var draft = new Draft(style);
        double seam = house.Seam.Inches.ToDouble(),
            wide = house.BindingWidth.Inches.ToDouble() / 2,
            edge = style.Bold.Value;
        // The first picture is wider by what hangs over to the right, the second higher by what stands up.
        double across = Shown + (turn == CornerTurn.Stop ? Over : 0),
            down = Shown + (turn == CornerTurn.Up ? Over : 0);
        // All three at one scale: that of the largest of them.
        double scale = Math.Min(
            (room.Width.Value - (2 * edge)) / (Shown + Over),
            (room.Height.Value - (2 * edge)) / (Shown + Over)
        );
        var corner = new Corner(
            draft,
            binding,
            new Spot(edge, edge + ((down - Shown) * scale)),
            scale,
            wide,
            seam
        );
        corner.Paint((int)turn);
        if (turn == CornerTurn.Stop)
        {
            corner.MarkStop(FigureWords.Measure(house.Seam, house));
        }
        return new(
            draft.Finish((across * scale) + (2 * edge), (down * scale) + (2 * edge)),
            FigureWords.BindingCorner(house, turn)
        );
    }

    /// <summary>
    /// One corner of the quilt, upper right; the strip comes along the upper edge. Places are reckoned as if the picture were
    /// turned a quarter to the right: the strip then comes down the right edge.
    /// </summary>
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
            // The quilt goes on to the left and below: no edge is drawn there.
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
            // The distance from the dot to the edge of the quilt, measured below the strip where there is room.
            Spot edge = Place(0, Shown) with
            {
                Y = stop.Y,
            };
            double y = Place(Shown - wide, 0).Y + 9;
            Stroke hair = Style.Pen(Style.Hair, Style.Ink);
            draft.Lines(
                [
                    (stop, new Spot(stop.X, y + 2)),
                    (new Spot(edge.X, Place(Shown - wide, 0).Y), new Spot(edge.X, y + 2)),
                ],
                hair
            );
            double width = LabelSize.Width(measure, Style.Small.Value);
            draft.Arrow(new Spot(stop.X - 9, y), new Spot(stop.X, y), hair, 3);
            draft.Arrow(new Spot(edge.X + 9, y), new Spot(edge.X, y), hair, 3);
            draft.Label(measure, new Spot(stop.X - 11 - (width / 2), y), Style.Small);
        }

        private Ink Letter => binding.LetterInk;

        private Spot Place(double x, double y) => at + (new Spot(y, Shown - x) * scale);

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
                bool goesOn =
                    (a.X == b.X && a.X == at.X)
                    || (a.Y == b.Y && Math.Abs(a.Y - at.Y - (Shown * scale)) < 1e-6);
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
