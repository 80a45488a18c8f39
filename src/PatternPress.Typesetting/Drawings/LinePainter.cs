using System.Collections.Immutable;
using PatternPress.Typesetting.Pages;

namespace PatternPress.Typesetting.Drawings;

/// <summary>Draws a line and what stands at its ends.</summary>
static class LinePainter
{
    // The half width of an arrowhead as a share of its length.
    const double Slimness = 0.36;

    public static void Paint(Mark.Line line, XY from, XY to, ImmutableArray<PageItem>.Builder items)
    {
        var length = (to - from).Length;
        if (length == 0)
        {
            return;
        }

        var along = (to - from) * (1 / length);
        var head = line.HeadSize.Value;
        // A filled head covers the end of the line: the line stops inside it, so that its tip stays sharp.
        var (start, end) = (
            line.Start == Arrowhead.Filled
                ? from + (along * Math.Min(head * 0.8, length / 2))
                : from,
            line.End == Arrowhead.Filled ? to - (along * Math.Min(head * 0.8, length / 2)) : to
        );
        items.Add(new PageItem.Path(VectorPath.Polyline(start, end), null, line.Stroke));
        Head(line.Start, from, along * -1, head, line.Stroke, items);
        Head(line.End, to, along, head, line.Stroke, items);
    }

    static void Head(
        Arrowhead kind,
        XY tip,
        XY along,
        double size,
        Stroke stroke,
        ImmutableArray<PageItem>.Builder items
    )
    {
        var across = new XY(-along.Y, along.X);
        var solid = stroke with { Dashes = [] };
        var back = tip - (along * size);
        var (left, right) = (
            back + (across * (size * Slimness)),
            back - (across * (size * Slimness))
        );
        switch (kind)
        {
            case Arrowhead.Filled:
                items.Add(
                    new PageItem.Path(VectorPath.Polygon(tip, left, right), stroke.Ink, null)
                );
                break;
            case Arrowhead.Open:
                items.Add(
                    new PageItem.Path(
                        VectorPath.Polyline(left, tip, right),
                        null,
                        solid with
                        {
                            Join = StrokeJoin.Round,
                        }
                    )
                );
                break;
            case Arrowhead.Bar:
                items.Add(
                    new PageItem.Path(
                        VectorPath.Polyline(
                            tip + (across * (size / 2)),
                            tip - (across * (size / 2))
                        ),
                        null,
                        solid
                    )
                );
                break;
            case Arrowhead.Tick:
                var slant = (along + across) * (size * 0.35);
                items.Add(
                    new PageItem.Path(VectorPath.Polyline(tip - slant, tip + slant), null, solid)
                );
                break;
            case Arrowhead.Dot:
                items.Add(new PageItem.Path(VectorPath.Circle(tip, size * 0.25), stroke.Ink, null));
                break;
            case Arrowhead.None:
                break;
        }
    }
}
