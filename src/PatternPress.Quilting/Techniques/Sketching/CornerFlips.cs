using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Techniques.Sketching;

/// <summary>
/// Squares sewn corner to corner over the corners of a larger piece, cut off beyond the seam and flipped open.
/// </summary>
/// <param name="width">Of the larger piece, as cut.</param>
/// <param name="height">Of the larger piece, as cut.</param>
/// <param name="square">Side of the squares, as cut.</param>
/// <param name="ground">Role of the larger piece.</param>
/// <param name="corners">The corners (0 upper left to 3 lower left) in the order they are sewn, and their roles.</param>
internal sealed class CornerFlips(
    Length width,
    Length height,
    Length square,
    int ground,
    ImmutableArray<(int Corner, int Role)> corners,
    House house
)
{
    /// <summary>The steps of every technique that flips corners; the last picture is the technique's own.</summary>
    /// <param name="measure">Name of the square's side.</param>
    /// <param name="fabrics">Fabric key by role.</param>
    public IEnumerable<Step> Steps(string measure, ImmutableArray<string> fabrics)
    {
        yield return new Step("mark", () => Mark(measure, fabrics));
        yield return new Step("sew", () => Place(0));
        yield return new Step("cut", () => WithCut(Place(0), 0));
        yield return new Step("press", () => Flipped(0));
        if (corners.Length > 1)
        {
            yield return new Step("repeat", Repeat);
        }
    }

    private Sketch Mark(string measure, ImmutableArray<string> fabrics)
    {
        var piece = new Rect(Length.Zero, Length.Zero, square, square);
        return new Sketch([
            .. corners
                .OrderBy(c => c.Role)
                .GroupBy(c => fabrics[c.Role])
                .Select(same =>
                    new FrameDrawing()
                        .Wrong(piece.ToPolygon(), same.First().Role)
                        .Marked(new Point(Length.Zero, square), new Point(square, Length.Zero))
                        .Size(piece, measure)
                        .Done(count: same.Count())
                ),
        ]);
    }

    private Sketch Repeat()
    {
        var frames = ImmutableArray.CreateBuilder<SketchFrame>();
        for (int i = 1; i < corners.Length; i++)
        {
            frames.Add(WithCut(Place(i), i).Done(i == 1 ? FrameLink.None : FrameLink.Then));
        }
        frames.Add(Flipped(corners.Length - 1).Done(FrameLink.Then));
        return new Sketch(frames.ToImmutable());
    }

    /// <summary>The larger piece with the first corners flipped.</summary>
    private FrameDrawing After(int done)
    {
        FrameDrawing drawing = new FrameDrawing().Right(
            new Rect(Length.Zero, Length.Zero, width, height).ToPolygon(),
            ground
        );
        foreach ((int corner, int role) in corners[..done])
        {
            (Point at, Point ahead, Point back) = Around(corner);
            drawing.Right(new Polygon([at, at + ahead, at + back]), role);
        }
        return drawing;
    }

    private FrameDrawing Place(int index)
    {
        (int corner, int role) = corners[index];
        (Point at, Point ahead, Point back) = Around(corner);
        return After(index)
            .Wrong(new Polygon([at, at + ahead, at + ahead + back, at + back]), role)
            .Marked(at + back, at + ahead)
            .Sewn(at + back, at + ahead);
    }

    private FrameDrawing WithCut(FrameDrawing drawing, int index)
    {
        (Point at, Point ahead, Point back) = Around(corners[index].Corner);
        var triangle = new Polygon([at, at + ahead, at + back]);
        SlantLine cut = SlantLine.Through(at + back, at + ahead).MovedOut(house.Seam);
        (Point from, Point to) = Convex.Chord([triangle], cut)!.Value;
        return drawing.Cut(from, to);
    }

    private FrameDrawing Flipped(int index)
    {
        (Point at, Point ahead, Point back) = Around(corners[index].Corner);
        var middle = new Point(at.X + ((ahead.X + back.X) / 2), at.Y + ((ahead.Y + back.Y) / 2));
        return After(index + 1)
            .Press(SlantLine.Through(at + back, at + ahead), middle, square / 5, house);
    }

    // A corner of the larger piece, with the ways along its edges to the far corners of the square on it.
    private (Point At, Point Ahead, Point Back) Around(int corner)
    {
        Length zero = Length.Zero;
        return corner switch
        {
            Corner.UpperLeft => (Point.Origin, new(square, zero), new(zero, square)),
            Corner.UpperRight => (new(width, zero), new(zero, square), new(-square, zero)),
            Corner.LowerRight => (new(width, height), new(-square, zero), new(zero, -square)),
            _ => (new(zero, height), new(zero, -square), new(square, zero)),
        };
    }
}
