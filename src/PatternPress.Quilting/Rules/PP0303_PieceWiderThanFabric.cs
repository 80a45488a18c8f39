using PatternPress.Quilting.Cutting;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A piece is wider than its fabric, even turned where it may be turned.</summary>
public sealed class PP0303_PieceWiderThanFabric : CheckingRule
{
    public PP0303_PieceWiderThanFabric()
        : base("PP0303", Severity.Error, "Piece wider than the fabric") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (
            MakingProblem.PieceDoesNotFit problem in context.Making.Problems.OfType<MakingProblem.PieceDoesNotFit>()
        )
        {
            if (problem.Piece.Kind != PieceProblemKind.WiderThanFabric)
            {
                continue;
            }
            Cut cut = problem.Piece.Cut;
            foreach (string size in problem.Sizes)
            {
                CutPlace place = CutPlace.Of(context, cut, size);
                yield return FindIn(
                    size,
                    place.Span,
                    $"{place.Name} is wider than fabric \"{cut.Fabric}\"",
                    "this piece",
                    $"{Wording.Measure(problem.Piece.Value)} needed, {Strip(problem.Piece)}: {Wording.Measure(problem.Piece.Value - problem.Piece.Limit)} missing",
                    hint: cut.Turnable
                        ? "use a smaller block, or a wider fabric (usable-width)"
                        : "a directional print is not turned: use a smaller block, a wider fabric (usable-width), or let it run sideways (directional: no)",
                    others: new Label(
                        context.Pattern.Fabric(cut.Fabric)!.Span,
                        $"usable width {Wording.Measure(problem.Piece.UsableWidth)}"
                    )
                );
            }
        }
    }

    private static string Strip(PieceProblem piece) =>
        piece.Limit == piece.UsableWidth
            ? $"{Wording.Measure(piece.Limit)} usable"
            : $"{Wording.Measure(piece.Limit)} in a strip of {Wording.Measure(piece.UsableWidth)} once its ends are squared";
}
