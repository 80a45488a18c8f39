using PatternPress.Quilting.Cutting;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The backing fabric is so narrow that seams use up the panels.</summary>
public sealed class PP0306_BackingWithoutPanels : CheckingRule
{
    public PP0306_BackingWithoutPanels()
        : base("PP0306", Severity.Error, "Backing that no panels make") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (
            MakingProblem.NoBacking problem in context.Making.Problems.OfType<MakingProblem.NoBacking>()
        )
        {
            foreach (string size in problem.Sizes)
            {
                yield return FindIn(
                    size,
                    context.Pattern.Sizes.FirstOrDefault(s => s.Key == size)?.Quilt.Backing?.Span
                        ?? Span.None,
                    "the backing fabric is narrower than its own seams",
                    "the backing",
                    $"{Wording.Measure(problem.BackingWidth)} wide, each seam takes {Wording.Measure(problem.JoinLoss)}",
                    hint: "is the backing's width as it should be?"
                );
            }
        }
    }
}
