using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Techniques.Sketching;

/// <summary>Squares cut into triangles.</summary>
internal static class Triangles
{
    /// <summary>A square with the cut from its lower left to its upper right corner.</summary>
    public static FrameDrawing CutOnce(Length side, int role, string measure) =>
        Square(side, role, measure).Cut(new Point(Length.Zero, side), new Point(side, Length.Zero));

    /// <summary>A square with the cuts corner to corner both ways.</summary>
    public static FrameDrawing CutTwice(Length side, int role, string measure) =>
        CutOnce(side, role, measure).Cut(Point.Origin, new Point(side, side));

    private static FrameDrawing Square(Length side, int role, string measure)
    {
        var square = new Rect(Length.Zero, Length.Zero, side, side);
        return new FrameDrawing().Right(square.ToPolygon(), role).Size(square, measure);
    }
}
