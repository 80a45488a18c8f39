using PatternPress.Typesetting;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures.Drafting;

/// <summary>A drawing while it is being made, in points on paper, with the room its labels have taken.</summary>
internal sealed class Draft(FigureStyle style)
{
    private readonly DrawingBuilder _marks = new();

    public FigureStyle Style { get; } = style;

    /// <summary>Keeps labels apart.</summary>
    public LabelBoard Board { get; } = new(1);

    public DrawingBuilder Marks => _marks;

    /// <summary>Fills, hatches or outlines a path.</summary>
    public void Area(
        VectorPath path,
        Ink? fill = null,
        Stroke? stroke = null,
        HatchFill? hatch = null
    )
    {
        if (!path.IsEmpty)
        {
            _marks.Area(path, fill, stroke, hatch);
        }
    }

    public void Lines(IEnumerable<(Spot From, Spot To)> lines, Stroke stroke) =>
        Area(Paths.Lines(lines), stroke: stroke);

    public void Arrow(Spot from, Spot to, Stroke stroke, double head = 4)
    {
        _marks.Add(
            new Mark.Line(Paths.At(from), Paths.At(to), stroke)
            {
                End = Arrowhead.Filled,
                HeadSize = Points.Of(head),
            }
        );
    }

    /// <summary>How far a dimension line stands outside the edge it measures, and its measure's further edge.</summary>
    public double DimensionRoom => Style.Medium.Value + 6;

    /// <summary>
    /// A dimension line with its measure, outside the edge: on the left hand of one going from one end to the other,
    /// which is outside for edges taken clockwise.
    /// </summary>
    public void Dimension(Spot from, Spot to, string text, int line = 0)
    {
        double length = (to - from).Length;
        if (length < 1)
        {
            return;
        }
        Spot along = (to - from) * (1 / length);
        var outward = new Spot(along.Y, -along.X);
        double size = Style.Medium.Value,
            away = 3 + (size * LabelSize.Capital / 2) + (line * DimensionRoom);
        Spot a = from + (outward * away),
            b = to + (outward * away);
        Stroke pen = Style.Pen(Style.Seam, Style.Quiet) with { Cap = StrokeCap.Butt };
        double width = LabelSize.Width(text, size);
        bool breaks = width + 12 <= length;
        // Upright text reads from the right, as the trade turns its drawings.
        double degrees = Math.Atan2(along.Y, along.X) * 180 / Math.PI;
        degrees =
            degrees > 90.01 ? degrees - 180
            : degrees <= -90.01 ? degrees + 180
            : degrees;
        Spot middle = Spot.Between(a, b, 0.5);
        if (breaks)
        {
            double half = (width / 2) + 2;
            End(middle - (along * half), a);
            End(middle + (along * half), b);
        }
        else
        {
            End(a, b);
            _marks.Line(Paths.At(b), Paths.At(a), pen, end: Arrowhead.Filled);
            middle += outward * ((size * LabelSize.Capital / 2) + 3);
        }
        foreach (Spot end in new[] { from, to })
        {
            Lines([(end + (outward * 1.5), end + (outward * (away + 2.5)))], pen);
        }
        Label(text, middle, Style.Medium, degrees: degrees);

        void End(Spot start, Spot tip) =>
            _marks.Add(
                new Mark.Line(Paths.At(start), Paths.At(tip), pen)
                {
                    End = Arrowhead.Filled,
                    HeadSize = Points.Of(3.2),
                }
            );
    }

    /// <summary>A small arrow the way a seam is pressed; with two heads where it is pressed open.</summary>
    public void PressArrow(Spot from, Spot to, bool open = false)
    {
        _marks.Add(
            new Mark.Line(Paths.At(from), Paths.At(to), new Stroke(Style.Edge, Style.Ink))
            {
                Start = open ? Arrowhead.Filled : Arrowhead.None,
                End = Arrowhead.Filled,
                HeadSize = Points.Of(open ? 2.6 : 3.4),
            }
        );
        Board.Take(Box.Of([from, to]).Grown(1.5));
    }

    /// <summary>Writes a label with its capitals centered on a place and keeps others off it.</summary>
    public void Label(
        string text,
        Spot center,
        Points size,
        bool bold = false,
        Ink? ink = null,
        Ink? halo = null,
        double haloWidth = 1.2,
        double degrees = 0
    )
    {
        Box box = LabelSize.BoxAt(text, center, size.Value);
        Board.Take(degrees % 180 == 0 ? box : Box.Around(center, box.Height, box.Width));
        _marks.Label(
            text,
            Paths.At(center),
            new LabelStyle
            {
                Family = Style.Family,
                Size = size,
                Bold = bold,
                Ink = ink ?? Style.Ink,
                Halo = halo is null ? Points.Zero : Points.Of(haloWidth),
                HaloInk = halo ?? Ink.White,
                Degrees = degrees,
            }
        );
    }

    private static Box TurnedBox(Box box, Spot about, double degrees)
    {
        (double sin, double cos) = Math.SinCos(degrees * Math.PI / 180);
        Spot[] corners = Array.ConvertAll(
            box.Corners(),
            corner =>
            {
                Spot from = corner - about;
                return about
                    + new Spot((from.X * cos) - (from.Y * sin), (from.X * sin) + (from.Y * cos));
            }
        );
        return Box.Of(corners);
    }

    /// <summary>Writes words to the right of a place, their capitals centered on it.</summary>
    /// <param name="width">Kept free for them.</param>
    public void Text(string text, Spot left, Points size, double width, bool bold = false)
    {
        Box box = LabelSize.BoxAt(text, new(left.X + (width / 2), left.Y), size.Value);
        Board.Take(box);
        _marks.Label(
            text,
            Paths.At(left),
            new LabelStyle
            {
                Family = Style.Family,
                Size = size,
                Bold = bold,
                Ink = Style.Ink,
                Across = LabelAcross.Left,
            }
        );
    }

    /// <summary>Writes a label at the first of some places where its box is free; says whether one was.</summary>
    public bool TryLabel(
        string text,
        IEnumerable<Spot> centers,
        Points size,
        bool bold = false,
        Ink? ink = null,
        Ink? halo = null,
        Box? within = null
    )
    {
        foreach (Spot center in centers)
        {
            Box box = LabelSize.BoxAt(text, center, size.Value);
            if (Board.IsFree(box) && (within is null || within.Value.Holds(box)))
            {
                Label(text, center, size, bold, ink, halo);
                return true;
            }
        }
        return false;
    }

    /// <summary>A number in a disc.</summary>
    public void Disc(string text, Spot center, bool filled = true)
    {
        Points size = Style.Medium;
        double radius = DiscRadius(text);
        Ink ground = filled ? Style.Ink : Ink.White;
        Area(
            VectorPath.Circle(Paths.At(center), Math.Round(radius, 2)),
            ground,
            Style.Pen(Style.Seam)
        );
        Board.Take(Box.Around(center, radius * 2, radius * 2));
        _marks.Label(
            text,
            Paths.At(center),
            new LabelStyle
            {
                Family = Style.Family,
                Size = size,
                Bold = true,
                Ink = filled ? Ink.White : Style.Ink,
            }
        );
    }

    public double DiscRadius(string text) =>
        Math.Max(Style.Medium.Value * 0.72, (LabelSize.Width(text, Style.Medium.Value) / 2) + 2);

    public Drawing Finish(double width, double height) =>
        _marks.ToDrawing(Math.Round(width, 2), Math.Round(height, 2));
}
