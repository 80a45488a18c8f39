using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Ways;

namespace PatternPress.Quilting.Techniques.Sketching;

/// <summary>How a quarter circle is sewn into its background.</summary>
internal sealed class QuarterCirclePictures(UnitForm form, House house)
{
    private readonly Length _seam = house.Seam;
    private readonly Polygon _pie = QuarterCircleTemplates.PieOf(form, house.Seam).Cut;
    private readonly Polygon _ground = QuarterCircleTemplates.GroundOf(form, house.Seam).Cut;
    private readonly Point _middle = form.Patches[0].Shape.Arcs[0].Middle(form.Patches[0].Shape);

    /// <summary>Each piece out of the square that holds it.</summary>
    public Sketch CutOut() =>
        new([
            Square(_pie, 0).Done(),
            Piece(_pie, 0).Done(FrameLink.Then),
            Square(_ground, 1).Done(),
            Piece(_ground, 1).Done(FrameLink.Then),
        ]);

    /// <summary>The middles of both curved edges, creased.</summary>
    public Sketch Marked() =>
        new([
            Piece(_pie, 0).Fold(new Point(-_seam, -_seam), _pie.Arcs[0].Middle(_pie)).Done(),
            Piece(_ground, 1)
                .Fold(
                    _ground.Arcs[0].Middle(_ground),
                    new Point(form.Width + _seam, form.Width + _seam)
                )
                .Done(),
        ]);

    /// <summary>The background laid on the quarter circle with the middles of the seam on each other: turned over along the
    /// tangent there.</summary>
    public Sketch Pinned()
    {
        var tangent = new SlantLine(1, 1, _middle.X + _middle.Y);
        return new FrameDrawing().Right(_pie, 0).Wrong(tangent.Mirror(_ground), 1);
    }

    /// <summary>The seam on the wrong side of the unit.</summary>
    public Sketch Sewn()
    {
        SlantLine upright = SlantLine.Upright(form.Width / 2);
        var drawing = new FrameDrawing()
            .Wrong(upright.Mirror(Sewn(0)), 0)
            .Wrong(upright.Mirror(Sewn(1)), 1);
        Polygon arc = form.Patches[0].Shape.Straightened();
        // The first corner is the center; the arc runs from the second to the last. Longer dashes read better.
        ImmutableArray<Point> places = arc.Corners[1..];
        const int step = 3;
        for (int i = 0; i + 1 < places.Length; i += step)
        {
            drawing.Sewn(
                upright.Mirror(places[i]),
                upright.Mirror(places[Math.Min(i + step, places.Length - 1)])
            );
        }
        return drawing;
    }

    /// <summary>The seam allowance lies toward the background.</summary>
    public Sketch Pressed()
    {
        Length reach = Length.Min(form.Width / 8, form.Width - _middle.X) / 2;
        var way = new Point(reach, reach);
        return Opened().Line(SketchLineKind.Press, _middle - way, _middle + way);
    }

    public Sketch Finished()
    {
        var whole = new Rect(-_seam, -_seam, form.Width + (_seam * 2), form.Height + (_seam * 2));
        return Opened().Size(whole, Sewing.UnfinishedWidth);
    }

    private FrameDrawing Opened() => new FrameDrawing().Right(Sewn(0), 0).Right(Sewn(1), 1);

    private static FrameDrawing Piece(Polygon cut, int role) => new FrameDrawing().Right(cut, role);

    private FrameDrawing Square(Polygon cut, int role)
    {
        Rect bounds = cut.Bounds;
        Length side = house.Ruler.Up(bounds.Width);
        var square = new Rect(bounds.X, bounds.Y, side, side);
        return new FrameDrawing()
            .Right(square.ToPolygon(), role)
            .Size(square, role == 0 ? QuarterCircleTemplates.Pie : QuarterCircleTemplates.Ground);
    }

    // A piece with its allowance on the outside of the unit only.
    private Polygon Sewn(int role)
    {
        Length o = Length.Zero,
            r = form.Measure,
            outer = form.Width + _seam;
        return role == 0
            ? new Polygon([
                new(-_seam, -_seam),
                new(r, -_seam),
                new(r, o),
                new(o, r),
                new(-_seam, r),
            ])
            {
                Arcs = [new QuarterArc(2, Point.Origin)],
            }
            : new Polygon([
                new(r, -_seam),
                new(outer, -_seam),
                new(outer, outer),
                new(-_seam, outer),
                new(-_seam, r),
                new(o, r),
                new(r, o),
            ])
            {
                Arcs = [new QuarterArc(5, Point.Origin)],
            };
    }
}
