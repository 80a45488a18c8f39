using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Rules.Neighbors;

/// <summary>
/// One edge of a patch. In doubles: whether two colors touch is a question for the eye, and the sum of all areas is
/// checked exactly elsewhere.
/// </summary>
internal readonly record struct Edge(
    double FromX,
    double FromY,
    double ToX,
    double ToY,
    string Fabric
)
{
    /// <summary>Far below the smallest stitch, far above the error of a double.</summary>
    private const double Tolerance = 1e-6;

    public static IEnumerable<Edge> Of(Patch patch)
    {
        Polygon shape = patch.Shape.Straightened();
        Point last = shape.Corners[^1];
        foreach (Point corner in shape.Corners)
        {
            yield return new Edge(
                last.X.Inches.ToDouble(),
                last.Y.Inches.ToDouble(),
                corner.X.Inches.ToDouble(),
                corner.Y.Inches.ToDouble(),
                patch.Fabric
            );
            last = corner;
        }
    }

    /// <summary>Whether the two lie on one line, run against each other and share more than a point.</summary>
    public bool Touches(Edge other)
    {
        double x = ToX - FromX,
            y = ToY - FromY;
        double length = Math.Sqrt((x * x) + (y * y));
        if (length < Tolerance)
        {
            return false;
        }
        (x, y) = (x / length, y / length);
        // Distance of the other's ends from this line, and how far along it they lie.
        double away1 = (x * (other.FromY - FromY)) - (y * (other.FromX - FromX));
        double away2 = (x * (other.ToY - FromY)) - (y * (other.ToX - FromX));
        if (Math.Abs(away1) > Tolerance || Math.Abs(away2) > Tolerance)
        {
            return false;
        }
        double along1 = (x * (other.FromX - FromX)) + (y * (other.FromY - FromY));
        double along2 = (x * (other.ToX - FromX)) + (y * (other.ToY - FromY));
        return along1 > along2 && Math.Min(along1, length) - Math.Max(along2, 0) > Tolerance;
    }
}
