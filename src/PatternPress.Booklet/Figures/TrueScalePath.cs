using PatternPress.Quilting.Geometry;
using PatternPress.Typesetting.Drawings;

namespace PatternPress.Booklet.Figures;

/// <summary>A shape's outline for pages in true size: arcs as curves, nothing rounded.</summary>
internal static class TrueScalePath
{
    /// <param name="place">Where a point of the shape stands on paper.</param>
    public static VectorPath Of(Polygon shape, Func<Point, XY> place)
    {
        var path = new PathBuilder();
        path.MoveTo(place(shape.Corners[0]));
        for (int i = 0; i < shape.Corners.Length; i++)
        {
            XY from = place(shape.Corners[i]),
                to = place(shape.Corners[(i + 1) % shape.Corners.Length]);
            int arc = IndexOf(shape, i);
            if (arc >= 0)
            {
                // The tangents at the ends of a quarter circle run parallel to the radii at the other ends.
                XY center = place(shape.Arcs[arc].Center);
                const double reach = VectorPath.Quarter;
                path.CurveTo(
                    new(from.X + ((to.X - center.X) * reach), from.Y + ((to.Y - center.Y) * reach)),
                    new(to.X + ((from.X - center.X) * reach), to.Y + ((from.Y - center.Y) * reach)),
                    to
                );
            }
            else if (i < shape.Corners.Length - 1)
            {
                path.LineTo(to);
            }
        }
        return path.Close().ToPath();
    }

    private static int IndexOf(Polygon shape, int edge)
    {
        for (int i = 0; i < shape.Arcs.Length; i++)
        {
            if (shape.Arcs[i].Edge == edge)
            {
                return i;
            }
        }
        return -1;
    }
}
