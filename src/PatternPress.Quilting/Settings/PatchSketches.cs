using PatternPress.Quilting.Cutting.Planning;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Quilting.Techniques;
using PatternPress.Quilting.Techniques.Sketching;

namespace PatternPress.Quilting.Settings;

/// <summary>How the pieces of a one-patch quilt are cut from their strips and rectangles.</summary>
public static class PatchSketches
{
    /// <summary>Pieces drawn in a strip.</summary>
    private const int Shown = 4;

    /// <summary>A strip with the first cuts across it; for an end, the rectangle with its one cut.</summary>
    public static Sketch Cutting(
        SettingPieceKind kind,
        bool reversed,
        Length height,
        Length seam,
        Ruler ruler
    )
    {
        PieceTemplate template = SixtyDegrees.TemplateOf(kind, reversed, height, seam);
        Rect bounds = template.Cut.Bounds;
        Polygon piece = template.Cut.MoveBy(new Point(-bounds.X, -bounds.Y));
        bool whole =
            kind
            is SettingPieceKind.Triangle
                or SettingPieceKind.Diamond
                or SettingPieceKind.HalfHexagon;
        if (!whole)
        {
            var rectangle = new Rect(
                Length.Zero,
                Length.Zero,
                ruler.Up(bounds.Width),
                ruler.Up(bounds.Height)
            );
            if (reversed)
            {
                piece = piece.MoveBy(new Point(rectangle.Width - bounds.Width, Length.Zero));
            }
            var drawing = new FrameDrawing().Right(rectangle.ToPolygon(), 0);
            Slants(piece, (from, to) => drawing.Cut(from, to));
            return new Sketch([
                drawing.Done(),
                new FrameDrawing().Right(piece, 0).Done(FrameLink.Then),
            ]);
        }
        SlantedPiece nested = SixtyDegrees.Nested(kind, height, seam);
        var strip = new Rect(
            Length.Zero,
            Length.Zero,
            nested.LengthFor(Shown) + (nested.Pitch / 2),
            nested.Height
        );
        var cuts = new FrameDrawing().Right(strip.ToPolygon(), 0);
        var seen = new HashSet<(Point, Point)>();
        for (int i = 0; i < Shown; i++)
        {
            Polygon lying = (
                i % 2 == 1 && kind != SettingPieceKind.Diamond
                    ? piece.Turned(new Turn(2), bounds.Width, bounds.Height)
                    : piece
            ).MoveBy(new Point(nested.Pitch * i, Length.Zero));
            Slants(
                lying,
                (from, to) =>
                {
                    if (seen.Add(from.Y < to.Y ? (from, to) : (to, from)))
                    {
                        cuts.Cut(from, to);
                    }
                }
            );
        }
        return new Sketch([cuts.Done(), new FrameDrawing().Right(piece, 0).Done(FrameLink.Then)]);
    }

    private static void Slants(Polygon shape, Action<Point, Point> draw)
    {
        for (int i = 0; i < shape.Corners.Length; i++)
        {
            Point from = shape.Corners[i],
                to = shape.Corners[(i + 1) % shape.Corners.Length];
            if (from.X != to.X && from.Y != to.Y)
            {
                draw(from, to);
            }
        }
    }
}
