using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Measures;

namespace PatternPress.Quilting.Rules;

/// <summary>
/// The seams that meet in each point of a drawing, as the ways in which they lead away from it. A seam that passes through a point
/// leads away from it twice.
/// </summary>
public sealed class SeamRays
{
    private readonly Dictionary<Point, List<Point>> _ways = [];

    public IEnumerable<(Point At, IReadOnlyList<Point> Ways)> All =>
        _ways.Select(entry => (entry.Key, (IReadOnlyList<Point>)entry.Value));

    /// <summary>The edges of a patch, which end at its corners.</summary>
    public void Add(Polygon patch)
    {
        for (int i = 0; i < patch.Corners.Length; i++)
        {
            Point at = patch.Corners[i];
            Add(at, patch.Corners[(i + 1) % patch.Corners.Length] - at);
            Add(at, patch.Corners[(i + patch.Corners.Length - 1) % patch.Corners.Length] - at);
        }
    }

    public void Add(Point at, Point way)
    {
        if (!_ways.TryGetValue(at, out List<Point>? ways))
        {
            _ways.Add(at, ways = []);
        }
        foreach (Point known in ways)
        {
            if (IsSame(known, way))
            {
                return;
            }
        }
        ways.Add(way);
    }

    private static bool IsSame(Point a, Point b)
    {
        // Most ways are told apart by their signs.
        if (a.X.Sign != b.X.Sign || a.Y.Sign != b.Y.Sign)
        {
            return false;
        }
        Exact cross = (a.X.Inches * b.Y.Inches) - (a.Y.Inches * b.X.Inches);
        return cross.Sign == 0;
    }
}
