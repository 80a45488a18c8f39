using PatternPress.Quilting.Cutting;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A piece would be cut with no width or height.</summary>
public sealed class PP0304_PieceWithoutSize : CheckingRule
{
    public PP0304_PieceWithoutSize()
        : base("PP0304", Severity.Error, "Piece without a size") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (
            MakingProblem.PieceDoesNotFit problem in context.Making.Problems.OfType<MakingProblem.PieceDoesNotFit>()
        )
        {
            if (problem.Piece.Kind != PieceProblemKind.NoSize)
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
                    $"{place.Name} of fabric \"{cut.Fabric}\" has no size",
                    "this piece",
                    $"it would be cut {Wording.Measure(cut.Width, cut.Height)}",
                    hint: "are the block, the seam and the ruler as they should be?"
                );
            }
        }
    }
}
