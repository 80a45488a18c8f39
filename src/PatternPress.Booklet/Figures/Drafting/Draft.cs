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

    /// <summary>Fills, hatches or outlines a path, or covers it with an image.</summary>
    public void Area(
        VectorPath path,
        Ink? fill = null,
        Stroke? stroke = null,
        HatchFill? hatch = null,
        ImageFill? image = null
    )
    {
        if (!path.IsEmpty)
        {
            _marks.Area(path, fill, stroke, hatch, image);
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
    public void Dimension(Spot from, Spot to, string text)
    {
        if ((to - from).Length < 1)
        {
            return;
        }
        DimensionLine line = LineFor(from, to, text);
        Stroke pen = Style.Pen(Style.Seam, Style.Quiet) with { Cap = StrokeCap.Butt };
        if (line.Breaks)
        {
            Spot half = (line.B - line.A) * (((line.Width / 2) + 2) / (line.B - line.A).Length);
            Head(line.Middle - half, line.A);
            Head(line.Middle + half, line.B);
        }
        else
        {
            Spot between = Spot.Between(line.A, line.B, 0.5);
            Head(between, line.A);
            Head(between, line.B);
        }
        Lines(
            [
                (from + (line.Outward * 1.5), line.A + (line.Outward * 2.5)),
                (to + (line.Outward * 1.5), line.B + (line.Outward * 2.5)),
            ],
            pen
        );
        Label(text, line.Middle, Style.Medium, degrees: line.Degrees);

        void Head(Spot start, Spot tip) =>
            _marks.Add(
                new Mark.Line(Paths.At(start), Paths.At(tip), pen)
                {
                    End = Arrowhead.Filled,
                    HeadSize = Points.Of(3.2),
                }
            );
    }

    /// <summary>What a dimension takes up.</summary>
    public Box DimensionBox(Spot from, Spot to, string text)
    {
        DimensionLine line = LineFor(from, to, text);
        Box words = TurnedBox(
            LabelSize.BoxAt(text, line.Middle, Style.Medium.Value),
            line.Middle,
            line.Degrees
        );
        return Box.Of([line.A + (line.Outward * 2.5), line.B + (line.Outward * 2.5)])
            .With(words)
            .Grown(0.5);
    }

    /// <param name="Breaks">Whether the words stand in the line; else outside it.</param>
    private readonly record struct DimensionLine(
        Spot A,
        Spot B,
        Spot Outward,
        Spot Middle,
        double Width,
        bool Breaks,
        double Degrees
    );

    private DimensionLine LineFor(Spot from, Spot to, string text)
    {
        double length = Math.Max((to - from).Length, 1e-9);
        Spot along = (to - from) * (1 / length);
        var outward = new Spot(along.Y, -along.X);
        double size = Style.Medium.Value,
            away = 3 + (size * LabelSize.Capital / 2);
        Spot a = from + (outward * away),
            b = to + (outward * away);
        double width = LabelSize.Width(text, size);
        bool breaks = width + 14 <= length;
        Spot middle = Spot.Between(a, b, 0.5);
        // Words run along the line and are never upside down.
        double degrees = Math.Atan2(along.Y, along.X) * 180 / Math.PI;
        degrees =
            degrees > 90.01 ? degrees - 180
            : degrees < -90.01 ? degrees + 180
            : degrees;
        degrees = Math.Abs(degrees) < 0.01 ? 0 : Math.Round(degrees, 2);
        if (!breaks)
        {
            middle += outward * ((size * LabelSize.Capital / 2) + 3);
        }
        return new(a, b, outward, middle, width, breaks, degrees);
    }

    /// <summary>An arrow in one piece with a white rim, in sight on any fabric.</summary>
    public void CasedArrow(Spot from, Spot to)
    {
        double length = Math.Max((to - from).Length, 1e-9),
            head = Math.Min(5, length * 0.6),
            half = Style.Bold.Value / 2,
            wing = head * 0.42;
        Spot along = (to - from) * (1 / length);
        var aside = new Spot(-along.Y, along.X);
        Spot neck = to - (along * head);
        VectorPath path = Paths.Closed(
            from + (aside * half),
            neck + (aside * half),
            neck + (aside * wing),
            to,
            neck - (aside * wing),
            neck - (aside * half),
            from - (aside * half)
        );
        Area(path, stroke: Style.Pen(Points.Of(2), Ink.White));
        Area(path, Style.Ink);
        Board.TakeLine(from, to, (2 * wing) + 1);
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
    /// <param name="plate">The ground it stands on: painted behind it, so that neither hatch nor line runs through it.</param>
    public void Label(
        string text,
        Spot center,
        Points size,
        bool bold = false,
        Ink? ink = null,
        Ink? plate = null,
        double degrees = 0
    )
    {
        Box box = LabelSize.BoxAt(text, center, size.Value);
        Board.Take(degrees % 180 == 0 ? box : Box.Around(center, box.Height, box.Width));
        if (plate is { } ground && degrees == 0)
        {
            Area(Paths.Closed(PlateFor(text, center, size)), ground);
        }
        _marks.Label(
            text,
            Paths.At(center),
            new LabelStyle
            {
                Family = Style.Family,
                Size = size,
                Bold = bold,
                Ink = ink ?? Style.Ink,
                Degrees = degrees,
            }
        );
    }

    /// <summary>A plate behind a label: its box and a little more, the corners cut off.</summary>
    public static Spot[] PlateFor(string text, Spot center, Points size)
    {
        const double margin = 0.8,
            cut = 1.2;
        Box box = LabelSize.BoxAt(text, center, size.Value).Grown(margin);
        return
        [
            new(box.X + cut, box.Y),
            new(box.Right - cut, box.Y),
            new(box.Right, box.Y + cut),
            new(box.Right, box.Bottom - cut),
            new(box.Right - cut, box.Bottom),
            new(box.X + cut, box.Bottom),
            new(box.X, box.Bottom - cut),
            new(box.X, box.Y + cut),
        ];
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
        Ink? plate = null,
        Box? within = null
    )
    {
        foreach (Spot center in centers)
        {
            Box box = LabelSize.BoxAt(text, center, size.Value);
            if (Board.IsFree(box) && (within is null || within.Value.Holds(box)))
            {
                Label(text, center, size, bold, ink, plate);
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
