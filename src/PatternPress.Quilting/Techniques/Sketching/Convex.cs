using System.Collections.Immutable;
using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Techniques.Sketching;

/// <summary>Convex polygons whose edges are level, upright or at 45°, as all patches of units are.</summary>
internal static class Convex
{
    public static ImmutableArray<SlantLine> Edges(Polygon polygon) =>
        [
            .. polygon.Corners.Select(
                (corner, i) =>
                    SlantLine.Through(corner, polygon.Corners[(i + 1) % polygon.Corners.Length])
            ),
        ];

    /// <summary>The polygon that the edges bound, in their order.</summary>
    public static Polygon Of(ImmutableArray<SlantLine> edges) =>
        new([
            .. edges.Select((edge, i) => edges[(i + edges.Length - 1) % edges.Length].Meet(edge)),
        ]);

    /// <summary>Every edge moved out: a finished patch with its seam allowance.</summary>
    public static Polygon Enlarged(Polygon polygon, Length by) =>
        Of([.. Edges(polygon).Select(edge => edge.MovedOut(by))]);

    /// <summary>The part inside a line.</summary>
    public static Polygon Clipped(Polygon polygon, SlantLine line)
    {
        var kept = ImmutableArray.CreateBuilder<Point>();
        for (int i = 0; i < polygon.Corners.Length; i++)
        {
            Point a = polygon.Corners[i],
                b = polygon.Corners[(i + 1) % polygon.Corners.Length];
            int sideA = line.SideOf(a),
                sideB = line.SideOf(b);
            if (sideA <= 0)
            {
                kept.Add(a);
            }
            if (sideA * sideB < 0)
            {
                kept.Add(SlantLine.Through(a, b).Meet(line));
            }
        }
        return new Polygon(kept.ToImmutable());
    }

    /// <summary>The stretch of a line within some polygons, from the left or, upright, from the top.</summary>
    public static (Point From, Point To)? Chord(IEnumerable<Polygon> polygons, SlantLine line)
    {
        var ends = new List<Point>();
        foreach (Polygon polygon in polygons)
        {
            for (int i = 0; i < polygon.Corners.Length; i++)
            {
                Point a = polygon.Corners[i],
                    b = polygon.Corners[(i + 1) % polygon.Corners.Length];
                int sideA = line.SideOf(a),
                    sideB = line.SideOf(b);
                if (sideA == 0)
                {
                    ends.Add(a);
                }
                else if (sideA * sideB < 0)
                {
                    ends.Add(SlantLine.Through(a, b).Meet(line));
                }
            }
        }
        if (ends.Count < 2)
        {
            return null;
        }
        ends.Sort((p, q) => p.X == q.X ? p.Y.CompareTo(q.Y) : p.X.CompareTo(q.X));
        return (ends[0], ends[^1]);
    }
}
