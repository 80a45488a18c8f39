using PatternPress.Quilting.Cutting;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A piece is larger than the panel its fabric is bought in, even turned where it may be turned.</summary>
public sealed class PP0319_PieceLargerThanPanel : CheckingRule
{
    public PP0319_PieceLargerThanPanel()
        : base("PP0319", Severity.Error, "Piece larger than the panel") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (
            MakingProblem.PieceDoesNotFit problem in context.Making.Problems.OfType<MakingProblem.PieceDoesNotFit>()
        )
        {
            if (
                problem.Piece.Kind != PieceProblemKind.LargerThanPanel
                || problem.Piece.Panel is not { } panel
            )
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
                    $"{place.Name} is larger than a {panel.Kind.One} of fabric \"{cut.Fabric}\"",
                    "this piece",
                    $"{Wording.Measure(cut.Width, cut.Height)} needed, {Wording.Measure(panel.Width, panel.Height)} usable: {Wording.Measure(problem.Piece.By)} missing",
                    hint: panel.Directional
                        ? "a directional print is not turned: use a smaller block, buy the fabric in larger pieces or by the yard (buy), or let it run sideways (directional: no)"
                        : "use a smaller block, or buy the fabric in larger pieces or by the yard (buy)",
                    others: new Label(
                        context.Pattern.Fabric(cut.Fabric)!.Span,
                        $"bought as {panel.Kind.Name}"
                    )
                );
            }
        }
    }
}
