using PatternPress.Quilting.Geometry;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Rules.Neighbors;

/// <summary>A block, sash or border strip in its place: a rectangle with the edges along its four sides. Quilt coordinates.
/// </summary>
/// <param name="Face">What its sides look like.</param>
/// <param name="Block">Null for what is no block.</param>
/// <param name="Kind">What it is called if it is no block: "the sashing", "border 1".</param>
internal readonly record struct Tile(
    double Left,
    double Top,
    double Right,
    double Bottom,
    TileFace Face,
    ColoredBlock? Block,
    string Kind
)
{
    public static Tile Of(Rect place, TileFace face, ColoredBlock? block, string kind) =>
        new(
            place.X.Inches.ToDouble(),
            place.Y.Inches.ToDouble(),
            place.Right.Inches.ToDouble(),
            place.Bottom.Inches.ToDouble(),
            face,
            block,
            kind
        );

    public string Name => Block is null ? Kind : NameOf(Block);

    public static string NameOf(ColoredBlock block) =>
        block.Block is null
            ? $"plain block \"{block.Key}\""
            : $"block \"{block.Block.Key}\" in coloring \"{block.Key}\"";
}

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
