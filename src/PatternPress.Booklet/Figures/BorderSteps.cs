using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Booklet.Figures;

/// <summary>
/// The steps in which borders are sewn on, counted through all borders of a pattern, so that a number means the same strips in
/// every size, figure and text: two steps a border, one where it has only sides, or only a top or bottom.
/// </summary>
public sealed class BorderSteps
{
    private readonly Dictionary<(int Border, int Pair), int> _numbers = [];

    private BorderSteps() { }

    /// <param name="quilts">All sizes of a pattern.</param>
    public static BorderSteps Of(IEnumerable<Quilt> quilts)
    {
        var most = new SortedDictionary<int, int>();
        foreach (Border border in quilts.SelectMany(quilt => quilt.Borders))
        {
            most[border.Number] = Math.Max(
                most.GetValueOrDefault(border.Number),
                Pairs(border).Count()
            );
        }
        var steps = new BorderSteps();
        foreach ((int border, int pairs) in most)
        {
            for (int pair = 0; pair < pairs; pair++)
            {
                steps._numbers.Add((border, pair), steps._numbers.Count + 1);
            }
        }
        return steps;
    }

    /// <summary>The steps of one border: the number of each and the sides that are sewn on in it.</summary>
    public IEnumerable<(int Number, BorderSide[] Sides)> For(Border border) =>
        Pairs(border).Select((sides, pair) => (Of(border.Number, pair), sides));

    /// <param name="pair">0 for what is sewn first, 1 for what is sewn then.</param>
    public int Of(int border, int pair) => _numbers[(border, pair)];

    /// <summary>The sides a border has, in the order they are sewn: two by two, as far as there are two.</summary>
    private static IEnumerable<BorderSide[]> Pairs(Border border)
    {
        BorderSide[] upright = [BorderSide.Left, BorderSide.Right],
            level = [BorderSide.Top, BorderSide.Bottom];
        bool topFirst = border.Design.Corners == BorderCorners.TopFirst;
        foreach (BorderSide[] pair in topFirst ? new[] { level, upright } : [upright, level])
        {
            BorderSide[] sides = Array.FindAll(
                pair,
                side =>
                    border.Pieces.Any(piece => piece.Side == side)
                    || border.Blocks.Any(block => block.Side == side)
            );
            if (sides.Length > 0)
            {
                yield return sides;
            }
        }
    }
}
