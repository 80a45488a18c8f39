using PatternPress.Quilting.Cutting;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A size takes more pieces of one kind than are computed with.</summary>
public sealed class PP0305_TooManyPieces : CheckingRule
{
    public PP0305_TooManyPieces()
        : base("PP0305", Severity.Error, "Too many pieces") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (
            MakingProblem.PieceDoesNotFit problem in context.Making.Problems.OfType<MakingProblem.PieceDoesNotFit>()
        )
        {
            if (problem.Piece.Kind != PieceProblemKind.BeyondLimit)
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
                    $"{place.Name} of fabric \"{cut.Fabric}\" is cut more often than anyone will cut",
                    "this piece",
                    $"{cut.Count:N0} pieces of {Wording.Measure(cut.Width, cut.Height)}",
                    hint: "use fewer or larger blocks"
                );
            }
        }
    }
}
