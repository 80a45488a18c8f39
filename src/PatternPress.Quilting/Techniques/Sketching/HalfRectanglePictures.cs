using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Sketching;

/// <summary>
/// Half-rectangle triangles from rectangles. Their diagonals have any slope, so points on and beside them are rounded to
/// sixty-five-thousandths of an inch: they are drawn, not cut. All is worked out for a diagonal that leans to the right and mirrored for
/// the other.
/// </summary>
/// <param name="cut">Width and height of the rectangles, as cut.</param>
internal sealed class HalfRectanglePictures(
    UnitForm form,
    (Length Width, Length Height) cut,
    House house
)
{
    private const string Width = "rectangle-width";
    private const string Height = "rectangle-height";

    private readonly bool _right = HalfRectangles.LeansRight(form);
    private readonly double _w = cut.Width.Inches.ToDouble();
    private readonly double _h = cut.Height.Inches.ToDouble();
    private readonly double _s = house.Seam.Inches.ToDouble();

    private double Diagonal => Math.Sqrt((_w * _w) + (_h * _h));

    /// <summary>The rectangle that lies on top, wrong side up, with the line drawn on it.</summary>
    public Sketch Mark()
    {
        var piece = new Rect(Length.Zero, Length.Zero, cut.Width, cut.Height);
        (Point from, Point to) = _right
            ? (piece.UpperLeft, new Point(piece.Right, piece.Bottom))
            : (new Point(piece.X, piece.Bottom), new Point(piece.Right, piece.Y));
        return new FrameDrawing()
            .Wrong(piece.ToPolygon(), 1)
            .Marked(from, to)
            .Size(piece, Width, Height);
    }

    /// <summary>The pair, the upper rectangle turned until its line runs through two corners of the lower.</summary>
    public FrameDrawing Sew() => Seams(Pair()).Marked(At(0, _h), At(_w, 0));

    public FrameDrawing Cut() => Seams(Pair()).Cut(At(0, _h), At(_w, 0));

    /// <summary>One of the two that come from a pair, or two triangles laid on each other.</summary>
    public FrameDrawing Half()
    {
        ((double X, double Y) from, (double X, double Y) to) = Seam(-_s);
        return new FrameDrawing()
            .Right(Shape((0, 0), (_w, 0), (0, _h)), 0)
            .Wrong(Shape(Mirrored(_w, _h), (_w, 0), (0, _h)), 1)
            .Sewn(At(from), At(to));
    }

    /// <summary>A rectangle of each fabric, right side up, with the cut that gives its triangles.</summary>
    public Sketch CutSingles()
    {
        var piece = new Rect(Length.Zero, Length.Zero, cut.Width, cut.Height);
        return new Sketch([.. new[] { 0, 1 }.Select(role => One(role).Done())]);

        FrameDrawing One(int role) =>
            new FrameDrawing()
                .Right(piece.ToPolygon(), role)
                .Cut(
                    new Point(_right ? piece.X : piece.Right, piece.Bottom),
                    new Point(_right ? piece.Right : piece.X, piece.Y)
                )
                .Size(piece, Width, Height);
    }

    /// <summary>The pair opened, with the way its seam is pressed.</summary>
    public FrameDrawing Open()
    {
        (double width, double height) = HalfRectangles.Opened(_w, _h, _s);
        double reach = Math.Min(width, height) / 6;
        // Across the seam, to the lower right.
        (double x, double y) = (_h / Diagonal * reach, _w / Diagonal * reach);
        (double X, double Y) middle = (width / 2, height / 2);
        FrameDrawing drawing = Opened();
        // Pressed to the figure, in the upper left.
        return house.Pressing == PressingStyle.Open
            ? drawing
                .Line(SketchLineKind.Press, At(middle), At(middle.X - x, middle.Y - y))
                .Line(SketchLineKind.Press, At(middle), At(middle.X + x, middle.Y + y))
            : drawing.Line(
                SketchLineKind.Press,
                At(middle.X + x, middle.Y + y),
                At(middle.X - x, middle.Y - y)
            );
    }

    /// <summary>What is trimmed off, then the unit.</summary>
    public Sketch Trim(int count)
    {
        (double width, double height) = HalfRectangles.Opened(_w, _h, _s);
        double a = form.Width.Inches.ToDouble(),
            b = form.Height.Inches.ToDouble();
        double scale = Diagonal * Math.Sqrt((a * a) + (b * b));
        double cosine = ((_w * a) + (_h * b)) / scale,
            sine = ((_h * a) - (_w * b)) / scale;
        (double X, double Y) half = ((a / 2) + _s, (b / 2) + _s);
        Point[] corners =
        [
            Turned(-half.X, -half.Y),
            Turned(half.X, -half.Y),
            Turned(half.X, half.Y),
            Turned(-half.X, half.Y),
        ];
        FrameDrawing drawing = Opened();
        for (int i = 0; i < 4; i++)
        {
            drawing.Cut(corners[i], corners[(i + 1) % 4]);
        }
        return new Sketch([drawing.Done(), Unit().Done(FrameLink.Then, count)]);

        // Where the cut-out rectangle's own diagonal has the seam's slope.
        Point Turned(double x, double y) =>
            At(
                Inside((width / 2) + (x * cosine) + (y * sine), width),
                Inside((height / 2) - (x * sine) + (y * cosine), height)
            );

        static double Inside(double value, double most) => Math.Clamp(value, 0, most);
    }

    // The unit as it is joined: the seam passes s inside two corners.
    private FrameDrawing Unit()
    {
        Length s = house.Seam,
            a = form.Width,
            b = form.Height;
        Length beyond = s * (a.Inches.One / b.Inches.One);
        Point top = Place(a + beyond, -s),
            bottom = Place(-beyond, b + s);
        var whole = new Rect(-s, -s, a + (s * 2), b + (s * 2));
        Polygon one = Clockwise([Place(-s, -s), top, bottom, Place(-s, b + s)]),
            two = Clockwise([top, Place(a + s, -s), Place(a + s, b + s), bottom]);
        return new FrameDrawing()
            .Right(one, 0)
            .Right(two, 1)
            .Size(whole, Sewing.UnfinishedWidth, Sewing.UnfinishedHeight);

        Point Place(Length x, Length y) => new(_right ? x : a - x, y);
    }

    private FrameDrawing Opened()
    {
        (double width, double height) = HalfRectangles.Opened(_w, _h, _s);
        return new FrameDrawing()
            .Right(Shape((0, 0), (width, 0), (0, height)), 0)
            .Right(Shape((width, 0), (width, height), (0, height)), 1);
    }

    private FrameDrawing Pair() =>
        new FrameDrawing()
            .Right(Shape((0, 0), (_w, 0), (_w, _h), (0, _h)), 0)
            .Wrong(Shape(Mirrored(0, 0), (_w, 0), Mirrored(_w, _h), (0, _h)), 1);

    private FrameDrawing Seams(FrameDrawing drawing)
    {
        foreach (double aside in (double[])[-_s, _s])
        {
            ((double X, double Y) from, (double X, double Y) to) = Seam(aside);
            drawing.Sewn(At(from), At(to));
        }
        return drawing;
    }

    // The stretch of a line beside the diagonal within the rectangle; a negative distance is to the upper left.
    private ((double X, double Y) From, (double X, double Y) To) Seam(double aside)
    {
        double x = aside * Diagonal / _h,
            y = aside * Diagonal / _w;
        return aside < 0 ? ((0, _h + y), (_w + x, 0)) : ((x, _h), (_w, y));
    }

    // The mirror image of a point beyond the diagonal.
    private (double X, double Y) Mirrored(double x, double y)
    {
        double beyond = ((x * _h) + (y * _w) - (_w * _h)) / (Diagonal * Diagonal);
        return (x - (2 * beyond * _h), y - (2 * beyond * _w));
    }

    private Polygon Shape(params ReadOnlySpan<(double X, double Y)> corners)
    {
        var points = ImmutableArray.CreateBuilder<Point>(corners.Length);
        foreach ((double X, double Y) corner in corners)
        {
            points.Add(At(corner));
        }
        return Clockwise(points.MoveToImmutable());
    }

    private static Polygon Clockwise(ImmutableArray<Point> corners)
    {
        var polygon = new Polygon(corners);
        return polygon.Area.SquareInches.Sign >= 0 ? polygon : new Polygon([.. corners.Reverse()]);
    }

    private Point At((double X, double Y) place) => At(place.X, place.Y);

    private Point At(double x, double y) => new(Drawn(_right ? x : _w - x), Drawn(y));

    private static Length Drawn(double inches) =>
        Length.FromInches(new Rational((long)Math.Round(inches * 65536), 65536));
}
