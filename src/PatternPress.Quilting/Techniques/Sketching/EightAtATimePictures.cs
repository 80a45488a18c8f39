using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Sketching;

/// <summary>Two large squares sewn beside both diagonals and cut into eight pairs of triangles.</summary>
/// <param name="half">Half the side of the squares, as cut.</param>
internal sealed class EightAtATimePictures(Length half, House house)
{
    private readonly Rect _square = new(Length.Zero, Length.Zero, half * 2, half * 2);

    private Polygon Shape => _square.ToPolygon();

    private static readonly ImmutableArray<(int A, int B)> Diagonals = [(1, 1), (1, -1)];

    public Sketch Mark(int role, string measure) =>
        WithDiagonals(new FrameDrawing().Wrong(Shape, role), SketchLineKind.Marked)
            .Size(_square, measure);

    public Sketch Sew(int lower, int upper) =>
        Seams(WithDiagonals(Pair(lower, upper), SketchLineKind.Marked));

    public Sketch Cut(int lower, int upper, string measure)
    {
        Length zero = Length.Zero,
            side = half * 2;
        FrameDrawing across = Seams(Pair(lower, upper))
            .Cut(new Point(half, zero), new Point(half, side))
            .Cut(new Point(zero, half), new Point(side, half))
            .Line(SketchLineKind.Dimension, Point.Origin, new Point(half, zero), measure);
        FrameDrawing along = WithDiagonals(Seams(Pair(lower, upper)), SketchLineKind.Cut)
            .Cut(new Point(half, zero), new Point(half, side))
            .Cut(new Point(zero, half), new Point(side, half));
        // One of the eight: the half of the upper left quarter that holds the corner's right angle has its seam
        // on the diagonal that runs to the middle.
        var quarter = new Rect(zero, zero, half, half);
        SlantLine diagonal = SlantLine.Through(Point.Origin, new Point(half, half));
        Polygon triangle = Convex.Clipped(quarter.ToPolygon(), diagonal);
        (Point from, Point to) = Convex.Chord([triangle], diagonal.MovedOut(-house.Seam))!.Value;
        return new Sketch([
            across.Done(),
            along.Done(FrameLink.Then),
            new FrameDrawing()
                .Under(triangle, lower)
                .Wrong(triangle, upper)
                .Sewn(from, to)
                .Done(FrameLink.Then, 8),
        ]);
    }

    private FrameDrawing Pair(int lower, int upper) =>
        new FrameDrawing().Under(Shape, lower).Wrong(Shape, upper);

    private FrameDrawing WithDiagonals(FrameDrawing drawing, SketchLineKind kind)
    {
        Length side = half * 2;
        return drawing
            .Line(kind, Point.Origin, new Point(side, side))
            .Line(kind, new Point(Length.Zero, side), new Point(side, Length.Zero));
    }

    private FrameDrawing Seams(FrameDrawing drawing)
    {
        foreach ((int a, int b) in Diagonals)
        {
            var diagonal = new SlantLine(a, b, b > 0 ? half * 2 : Length.Zero);
            foreach (Length offset in (ReadOnlySpan<Length>)[-house.Seam, house.Seam])
            {
                (Point from, Point to) = Convex.Chord([Shape], diagonal.MovedOut(offset))!.Value;
                drawing.Sewn(from, to);
            }
        }
        return drawing;
    }
}
