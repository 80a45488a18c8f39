using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Sketching;

/// <summary>
/// Two squares right sides together, sewn to either side of a diagonal and cut apart on it. The diagonal runs from
/// the upper right to the lower left, so that the lower square ends up at the upper left of the unit.
/// </summary>
/// <param name="side">Of the squares, as cut.</param>
internal sealed class DiagonalPairs(Length side, House house)
{
    private readonly Polygon _square = new Rect(Length.Zero, Length.Zero, side, side).ToPolygon();

    private Point UpperRight => new(side, Length.Zero);

    private Point LowerLeft => new(Length.Zero, side);

    private SlantLine Diagonal => SlantLine.Through(LowerLeft, UpperRight).Reversed;

    // The stretch that sewing at the seam takes off a leg.
    private Length Loss => Allowance.Diagonal(house.Seam);

    /// <summary>The square that lies on top, wrong side up, with the diagonal drawn.</summary>
    public FrameDrawing Mark(int role, string measure) =>
        new FrameDrawing()
            .Wrong(_square, role)
            .Marked(LowerLeft, UpperRight)
            .Size(_square.Bounds, measure);

    /// <summary>The pair with its diagonal and the seams beside it.</summary>
    public FrameDrawing Sew(int lower, int upper)
    {
        FrameDrawing drawing = Pair(lower, upper).Marked(LowerLeft, UpperRight);
        return Seams(drawing);
    }

    /// <summary>The sewn pair with the cut on its diagonal.</summary>
    public FrameDrawing Cut(int lower, int upper) =>
        Seams(Pair(lower, upper)).Cut(LowerLeft, UpperRight);

    /// <summary>The halves after the cut.</summary>
    public FrameDrawing Halves(int lower, int upper)
    {
        Length gap = side / 6;
        var aside = new Point(gap, gap);
        Polygon upperLeft = Convex.Clipped(_square, Diagonal);
        Polygon lowerRight = Convex.Clipped(_square, Diagonal.Reversed).MoveBy(aside);
        (Point a, Point b) = Chord(Diagonal.MovedOut(-house.Seam));
        (Point c, Point d) = Chord(Diagonal.MovedOut(house.Seam));
        return new FrameDrawing()
            .Under(upperLeft, lower)
            .Wrong(upperLeft, upper)
            .Under(lowerRight, lower)
            .Wrong(lowerRight, upper)
            .Sewn(a, b)
            .Sewn(c + aside, d + aside);
    }

    /// <summary>A half opened: the unit before trimming, with the ears at the ends of its seam, pressed to the lower square's fabric.</summary>
    public FrameDrawing Open(int lower, int upper)
    {
        Length zero = Length.Zero,
            unit = side - Loss;
        Point upperRight = new(unit, zero),
            lowerLeft = new(zero, unit);
        SlantLine seam = SlantLine.Through(lowerLeft, upperRight);
        var drawing = new FrameDrawing();
        if (house.Pressing != PressingStyle.Open)
        {
            drawing
                .Wrong(new Polygon([upperRight, new(unit - Loss, zero), new(unit, -Loss)]), lower)
                .Wrong(new Polygon([lowerLeft, new(-Loss, unit), new(zero, unit - Loss)]), lower);
        }
        return drawing
            .Right(new Polygon([Point.Origin, upperRight, lowerLeft]), lower)
            .Right(new Polygon([upperRight, new(unit, unit), lowerLeft]), upper)
            .Press(seam, new Point(unit / 2, unit / 2), unit / 6, house);
    }

    private FrameDrawing Pair(int lower, int upper) =>
        new FrameDrawing().Under(_square, lower).Wrong(_square, upper);

    private FrameDrawing Seams(FrameDrawing drawing)
    {
        foreach (Length offset in (ReadOnlySpan<Length>)[-house.Seam, house.Seam])
        {
            (Point from, Point to) = Chord(Diagonal.MovedOut(offset));
            drawing.Sewn(from, to);
        }
        return drawing;
    }

    private (Point From, Point To) Chord(SlantLine line) => Convex.Chord([_square], line)!.Value;
}
