using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Techniques.Kinds;

namespace PatternPress.Quilting.Techniques.Sketching;

/// <summary>
/// Quarter-square units out of half-square units. The half-square unit that lies below is right side up, fabric 0 at
/// its upper left; the one on top shows its wrong side, fabric 0 at the lower right. Cut apart from the upper left
/// to the lower right and opened, fabric 0 lies at top and bottom.
/// </summary>
/// <param name="side">Of the squares, as cut.</param>
internal sealed class QuarterSquarePictures(UnitForm form, Length side, House house)
{
    private readonly DiagonalPairs _pairs = new(side, house);

    // A half-square unit is smaller than its squares by what its seam takes.
    private readonly Length _unit = side - Allowance.Diagonal(house.Seam);

    // The fabrics sewn to fabric 0: of the unit below and of the one on top.
    private (int Below, int Above) Grounds =>
        form.Variant == QuarterSquare.TwoFabrics ? (1, 1) : (2, 1);

    private ImmutableArray<int> EachGround =>
        form.Variant == QuarterSquare.TwoFabrics ? [1] : [1, 2];

    public Sketch Mark() => Each(ground => _pairs.Mark(ground, "square"));

    public Sketch Sew() => Each(ground => _pairs.Sew(0, ground));

    public Sketch Cut() => Each(ground => _pairs.Cut(0, ground));

    public Sketch Press() => Each(ground => _pairs.Open(0, ground), 2);

    public Sketch MarkAgain() => Marked(Upper(new FrameDrawing()));

    public Sketch SewAgain()
    {
        FrameDrawing below = new FrameDrawing();
        (Polygon upperLeft, Polygon lowerRight) = Halves();
        return new Sketch([
            below.Right(upperLeft, 0).Right(lowerRight, Grounds.Below).Done(),
            Seams(Marked(Upper(Lower()))).Done(FrameLink.Then),
        ]);
    }

    public Sketch CutAgain() => Seams(Upper(Lower())).Cut(Point.Origin, new Point(_unit, _unit));

    private Sketch Each(Func<int, FrameDrawing> draw, int count = 1) =>
        new([.. EachGround.Select(ground => draw(ground).Done(count: count))]);

    private (Polygon UpperLeft, Polygon LowerRight) Halves()
    {
        Length zero = Length.Zero;
        Point upperRight = new(_unit, zero),
            lowerLeft = new(zero, _unit);
        return (
            new Polygon([Point.Origin, upperRight, lowerLeft]),
            new Polygon([upperRight, new(_unit, _unit), lowerLeft])
        );
    }

    private FrameDrawing Lower()
    {
        (Polygon upperLeft, Polygon lowerRight) = Halves();
        Length peek = _unit / 20;
        var aside = new Point(peek, peek);
        return new FrameDrawing()
            .Right(upperLeft.MoveBy(aside), 0)
            .Right(lowerRight.MoveBy(aside), Grounds.Below);
    }

    private FrameDrawing Upper(FrameDrawing drawing)
    {
        (Polygon upperLeft, Polygon lowerRight) = Halves();
        return drawing
            .Wrong(upperLeft, Grounds.Above)
            .Wrong(lowerRight, 0)
            .Fold(new Point(Length.Zero, _unit), new Point(_unit, Length.Zero));
    }

    private FrameDrawing Marked(FrameDrawing drawing) =>
        drawing.Marked(Point.Origin, new Point(_unit, _unit));

    private FrameDrawing Seams(FrameDrawing drawing)
    {
        Length loss = Allowance.Diagonal(house.Seam),
            zero = Length.Zero;
        return drawing
            .Sewn(new Point(loss, zero), new Point(_unit, _unit - loss))
            .Sewn(new Point(zero, loss), new Point(_unit - loss, _unit));
    }
}
