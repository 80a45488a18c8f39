using System.Collections.Immutable;
using System.Globalization;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Sketching;

/// <summary>Draws one frame of a sketch.</summary>
internal sealed class FrameDrawing
{
    private readonly ImmutableArray<SketchShape>.Builder _shapes =
        ImmutableArray.CreateBuilder<SketchShape>();

    private readonly ImmutableArray<SketchLine>.Builder _lines =
        ImmutableArray.CreateBuilder<SketchLine>();

    private readonly ImmutableArray<SketchLabel>.Builder _labels =
        ImmutableArray.CreateBuilder<SketchLabel>();

    public FrameDrawing Right(Polygon shape, int role) => Shape(shape, role, FabricSide.Right);

    public FrameDrawing Wrong(Polygon shape, int role) => Shape(shape, role, FabricSide.Wrong);

    public FrameDrawing Shape(Polygon shape, int role, FabricSide side)
    {
        _shapes.Add(new SketchShape(shape, role, side));
        return this;
    }

    public FrameDrawing Shapes(IEnumerable<SketchShape> shapes)
    {
        _shapes.AddRange(shapes);
        return this;
    }

    /// <summary>
    /// A piece that would be hidden by one of equal size on top of it, moved aside so that an edge of it shows.
    /// </summary>
    public FrameDrawing Under(Polygon shape, int role)
    {
        Rect bounds = shape.Bounds;
        Length peek = Length.Max(bounds.Width, bounds.Height) / 20;
        return Right(shape.MoveBy(new Point(peek, peek)), role);
    }

    public FrameDrawing Marked(Point from, Point to) => Line(SketchLineKind.Marked, from, to);

    public FrameDrawing Sewn(Point from, Point to) => Line(SketchLineKind.Sewn, from, to);

    public FrameDrawing Cut(Point from, Point to) => Line(SketchLineKind.Cut, from, to);

    public FrameDrawing Fold(Point from, Point to) => Line(SketchLineKind.Fold, from, to);

    public FrameDrawing Line(SketchLineKind kind, Point from, Point to, string? measure = null)
    {
        _lines.Add(new SketchLine(kind, from, to, measure));
        return this;
    }

    /// <summary>A number written over what lies at a point.</summary>
    public FrameDrawing Number(Point at, int number)
    {
        _labels.Add(new SketchLabel(at, null, number.ToString(CultureInfo.InvariantCulture)));
        return this;
    }

    /// <summary>The four edges of a rectangle as cuts.</summary>
    public FrameDrawing CutRound(Rect rect)
    {
        ImmutableArray<Point> corners = rect.ToPolygon().Corners;
        for (int i = 0; i < 4; i++)
        {
            Cut(corners[i], corners[(i + 1) % 4]);
        }
        return this;
    }

    /// <summary>Both dimensions of a rectangle, at its top and its right; only one of a square.</summary>
    public FrameDrawing Size(Rect rect, string width, string? height = null)
    {
        Line(SketchLineKind.Dimension, rect.UpperLeft, new Point(rect.Right, rect.Y), width);
        return height is null
            ? this
            : Line(
                SketchLineKind.Dimension,
                new Point(rect.Right, rect.Y),
                new Point(rect.Right, rect.Bottom),
                height
            );
    }

    /// <summary>
    /// An arrow across a seam in the direction in which its allowance is pressed, or one to either side where seams
    /// are pressed open.
    /// </summary>
    /// <param name="seam">Its outside, towards (A, B), is the side the allowance is pressed to.</param>
    /// <param name="at">A point of the seam.</param>
    /// <param name="reach">Half the length of the arrow.</param>
    public FrameDrawing Press(SlantLine seam, Point at, Length reach, House house)
    {
        if (seam.A != 0 && seam.B != 0)
        {
            reach = Allowance.SideOfDiagonal(reach);
        }
        var way = new Point(reach * seam.A, reach * seam.B);
        if (house.Pressing == PressingStyle.Open)
        {
            Line(SketchLineKind.Press, at, at + way);
            return Line(SketchLineKind.Press, at, at - way);
        }
        return Line(SketchLineKind.Press, at - way, at + way);
    }

    public SketchFrame Done(FrameLink link = FrameLink.None, int count = 1) =>
        new(_shapes.ToImmutable(), _lines.ToImmutable(), _labels.ToImmutable())
        {
            Link = link,
            Count = count,
        };

    public static implicit operator Sketch(FrameDrawing drawing) => new([drawing.Done()]);
}
