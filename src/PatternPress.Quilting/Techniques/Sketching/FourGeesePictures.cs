using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Sketching;

/// <summary>
/// Flying geese out of one large square (role 0) and four small ones (role 1). Two small squares lie in the upper
/// left and lower right corners of the large one; each half of it then takes one more in its right angle.
/// </summary>
/// <param name="large">Side of the large square, as cut.</param>
/// <param name="small">Side of the small squares, as cut.</param>
internal sealed class FourGeesePictures(Length large, Length small, House house)
{
    // How far beside a 45° seam its parallel through the cut runs, measured along an edge.
    private Length Loss => Allowance.Diagonal(house.Seam);

    private static Length Zero => Length.Zero;

    private Point LowerRight => new(large, large);

    private Point UpperRight => new(large, Zero);

    public Sketch Mark(string measure)
    {
        var square = new Rect(Zero, Zero, small, small);
        return new Sketch([
            new FrameDrawing()
                .Wrong(square.ToPolygon(), 1)
                .Marked(Point.Origin, new Point(small, small))
                .Size(square, measure)
                .Done(count: 4),
        ]);
    }

    public Sketch Sew(string measure) =>
        Seams(Laid())
            .Marked(Point.Origin, LowerRight)
            .Size(new Rect(Zero, Zero, large, large), measure);

    public Sketch Cut()
    {
        Polygon half = new([Point.Origin, UpperRight, LowerRight]);
        return new Sketch([
            Seams(Laid()).Cut(Point.Origin, LowerRight).Done(),
            new FrameDrawing()
                .Right(half, 0)
                .Wrong(new Polygon([Point.Origin, new(small, Zero), new(small, small)]), 1)
                .Wrong(
                    new Polygon([
                        new(large, large - small),
                        LowerRight,
                        new(large - small, large - small),
                    ]),
                    1
                )
                .Sewn(new Point(Loss, Zero), new Point(large, large - Loss))
                .Done(FrameLink.Then, 2),
        ]);
    }

    public Sketch Press()
    {
        // The seam; the small triangles now lie on the other side of it.
        SlantLine seam = new SlantLine(-1, 1, -Loss);
        FrameDrawing drawing = Heart();
        foreach (Rational part in (Rational[])[new(1, 4), new(3, 4)])
        {
            Length along = (large - Loss) * part;
            drawing.Press(seam, new Point(Loss + along, along), small / 6, house);
        }
        return new Sketch([drawing.Done(count: 2)]);
    }

    public Sketch SewAgain() => new([Third(marked: true).Done(count: 2)]);

    public Sketch CutAgain() =>
        new([Third(marked: false).Cut(UpperRight, new Point(large - small, small)).Done(count: 2)]);

    private FrameDrawing Laid() =>
        new FrameDrawing()
            .Right(new Rect(Zero, Zero, large, large).ToPolygon(), 0)
            .Wrong(new Rect(Zero, Zero, small, small).ToPolygon(), 1)
            .Wrong(new Rect(large - small, large - small, small, small).ToPolygon(), 1);

    private FrameDrawing Seams(FrameDrawing drawing) =>
        drawing
            .Sewn(new Point(Loss, Zero), new Point(large, large - Loss))
            .Sewn(new Point(Zero, Loss), new Point(large - Loss, large));

    // The upper right half with its two small triangles opened. They were turned over along the seam x − y = loss.
    private FrameDrawing Heart()
    {
        var seam = new SlantLine(-1, 1, -Loss);
        return new FrameDrawing()
            .Right(new Polygon([new(Loss, Zero), UpperRight, new(large, large - Loss)]), 0)
            .Right(seam.Mirror(new Polygon([Point.Origin, new(small, Zero), new(small, small)])), 1)
            .Right(
                seam.Mirror(
                    new Polygon([
                        new(large, large - small),
                        LowerRight,
                        new(large - small, large - small),
                    ])
                ),
                1
            );
    }

    // One more small square in the right angle, sewn to either side of its diagonal.
    private FrameDrawing Third(bool marked)
    {
        FrameDrawing drawing = Heart()
            .Wrong(new Rect(large - small, Zero, small, small).ToPolygon(), 1)
            .Sewn(new Point(large - Loss, Zero), new Point(large - small, small - Loss))
            .Sewn(new Point(large, Loss), new Point(large - small + Loss, small));
        return marked ? drawing.Marked(UpperRight, new Point(large - small, small)) : drawing;
    }
}
