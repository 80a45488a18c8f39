using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A scatter promises that no two edge neighbors are alike, and some are.</summary>
public sealed class PP0239_RepeatedNeighbors : CheckingRule
{
    public PP0239_RepeatedNeighbors()
        : base("PP0239", Severity.Warning, "Scattered neighbors that are alike") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (Quilt quilt in context.Quilts)
        {
            Fill fill = quilt.Size.Quilt.Fill;
            if (fill.Kind != FillKind.Scatter)
            {
                continue;
            }
            var at = quilt.Places.ToDictionary(p => (p.Row, p.Column), p => p.Block.Key);
            List<BlockPlace> alike =
            [
                .. quilt.Places.Where(p =>
                    Beyond(quilt, p).Any(place => at.GetValueOrDefault(place) == p.Block.Key)
                ),
            ];
            if (alike.Count > 0)
            {
                yield return FindIn(
                    quilt.Size.Key,
                    fill.Span,
                    "the scatter leaves neighbors alike",
                    "this fill",
                    $"{Wording.Count(alike.Count, "place", "places")} with an equal neighbor to the right or below, the first in row {alike[0].Row + 1}, column {alike[0].Column + 1}",
                    hint: "list each coloring once, or try another seed"
                );
            }
        }
    }

    // On point a place touches two of the next line, which lies half a place aside.
    private static IEnumerable<(int Row, int Column)> Beyond(Quilt quilt, BlockPlace place)
    {
        (int row, int column) = (place.Row, place.Column);
        if (!quilt.OnPoint)
        {
            return [(row, column + 1), (row + 1, column)];
        }
        int aside = row % 2 == 0 ? column - 1 : column + 1;
        return quilt.Size.Quilt.Between is null ? [(row + 1, column), (row + 1, aside)] : [];
    }
}
