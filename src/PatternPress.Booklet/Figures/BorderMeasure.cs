using PatternPress.Booklet.Figures.Drafting;
using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// Where to measure a quilt before its borders are cut: through the middle and near both edges, first down, then,
/// with the first two strips on, across.
/// </summary>
public static class BorderMeasure
{
    /// <param name="aspect">Height of the quilt divided by its width.</param>
    /// <param name="topFirst">Whether the top and bottom strips are sewn on first.</param>
    public static Picture Draw(double aspect, bool topFirst, Palette palette, FigureRoom room)
    {
        FigureStyle style = palette.Style;
        var draft = new Draft(style);
        aspect = Math.Clamp(aspect, 0.5, 2);
        const double between = 34;
        double strip = 9 * style.Enlarged,
            edge = style.Edge.Value;
        double head = style.Medium.Value + 5;
        double width = Math.Min(
            (room.Width.Value - between - (2 * strip) - (2 * edge)) / 2,
            (room.Height.Value - head - (2 * strip) - edge) / aspect
        );
        double height = width * aspect;
        double wide = width + (topFirst ? 0 : 2 * strip),
            high = height + (topFirst ? 2 * strip : 0);
        double top = head + (edge / 2) + ((high - height) / 2);
        var first = new Box(edge / 2, top, width, height);
        var second = new Box(first.Right + between + ((wide - width) / 2), top, width, height);
        Paint(draft, first);
        Measure(draft, first, down: !topFirst);
        Box bordered = topFirst
            ? new(second.X, second.Y - strip, second.Width, second.Height + (2 * strip))
            : new(second.X - strip, second.Y, second.Width + (2 * strip), second.Height);
        Paint(draft, second);
        foreach (
            Box piece in topFirst
                ? new[]
                {
                    new Box(second.X, bordered.Y, second.Width, strip),
                    new Box(second.X, second.Bottom, second.Width, strip),
                }
                :
                [
                    new Box(bordered.X, second.Y, strip, second.Height),
                    new Box(second.Right, second.Y, strip, second.Height),
                ]
        )
        {
            draft.Area(
                Paths.Of(piece),
                style.IsBlackOnly ? Ink.White : Ink.Grey(0.72),
                style.Pen(style.Edge)
            );
        }
        Measure(draft, bordered, down: topFirst);
        // Words, not numbers: numbers are those of steps.
        foreach (
            (string word, Box box) in new[]
            {
                (FigureWords.First, first),
                (FigureWords.Then, second),
            }
        )
        {
            draft.Label(
                word,
                new Spot(box.Center.X, (style.Medium.Value / 2) + 0.5),
                style.Medium,
                bold: true
            );
        }
        var middle = new Spot((first.Right + bordered.X) / 2, first.Center.Y);
        draft.Arrow(middle - new Spot(8, 0), middle + new Spot(8, 0), style.Pen(style.Bold), 6);
        return new(
            draft.Finish(
                bordered.Right + (edge / 2),
                Math.Max(first.Bottom, bordered.Bottom) + (edge / 2)
            ),
            FigureWords.BorderMeasure(topFirst)
        );
    }

    private static void Paint(Draft draft, Box quilt)
    {
        FigureStyle style = draft.Style;
        draft.Area(
            Paths.Of(quilt),
            style.Ground,
            style.Pen(style.Edge) with
            {
                Join = StrokeJoin.Miter,
            }
        );
    }

    // The measure through the middle bold, those near the edges quiet.
    private static void Measure(Draft draft, Box quilt, bool down)
    {
        FigureStyle style = draft.Style;
        foreach (double share in new[] { 0.5, 0.14, 0.86 })
        {
            bool main = share == 0.5;
            Spot from = down
                ? new(quilt.X + (quilt.Width * share), quilt.Y + 1)
                : new(quilt.X + 1, quilt.Y + (quilt.Height * share));
            Spot to = down
                ? new(quilt.X + (quilt.Width * share), quilt.Bottom - 1)
                : new(quilt.Right - 1, quilt.Y + (quilt.Height * share));
            Stroke pen = main
                ? style.Pen(style.Bold)
                : style.Pen(style.Seam, style.Quiet) with
                {
                    Dashes = [Points.Of(2), Points.Of(2)],
                    Cap = StrokeCap.Butt,
                };
            draft.Marks.Add(
                new Mark.Line(Paths.At(from), Paths.At(to), pen)
                {
                    Start = Arrowhead.Filled,
                    End = Arrowhead.Filled,
                    HeadSize = Points.Of(main ? 5 : 3.5),
                }
            );
        }
    }
}
