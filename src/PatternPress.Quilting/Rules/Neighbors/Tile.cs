using PatternPress.Quilting.Geometry;

namespace PatternPress.Quilting.Rules.Neighbors;

/// <summary>A block, sash or border strip in its place: a rectangle with the edges along its four sides.</summary>
/// <param name="Place">In quilt coordinates.</param>
/// <param name="Name">"block \"lamp\"", "the sashing", "border 1".</param>
/// <param name="Face">What its sides look like.</param>
internal sealed record Tile(Rect Place, string Name, TileFace Face);

/// <summary>The patches along the sides of a tile, relative to its upper left corner; shared by all tiles alike.</summary>
internal sealed class TileFace
{
    public TileFace(IEnumerable<Edge> edges, double width, double height)
    {
        foreach (Edge edge in edges)
        {
            if (IsAt(edge.FromX, edge.ToX, 0))
            {
                Left.Add(edge);
            }
            else if (IsAt(edge.FromX, edge.ToX, width))
            {
                Right.Add(edge);
            }
            if (IsAt(edge.FromY, edge.ToY, 0))
            {
                Top.Add(edge);
            }
            else if (IsAt(edge.FromY, edge.ToY, height))
            {
                Bottom.Add(edge);
            }
        }
    }

    public List<Edge> Left { get; } = [];

    public List<Edge> Right { get; } = [];

    public List<Edge> Top { get; } = [];

    public List<Edge> Bottom { get; } = [];

    private static bool IsAt(double from, double to, double line) =>
        Math.Abs(from - line) < 1e-6 && Math.Abs(to - line) < 1e-6;
}
