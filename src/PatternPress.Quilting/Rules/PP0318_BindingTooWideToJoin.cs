using PatternPress.Quilting.Cutting;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Binding strips as wide as they are long: a diagonal join would use them up.</summary>
public sealed class PP0318_BindingTooWideToJoin : CheckingRule
{
    public PP0318_BindingTooWideToJoin()
        : base("PP0318", Severity.Error, "Binding too wide to join") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (
            MakingProblem.NoBinding problem in context.Making.Problems.OfType<MakingProblem.NoBinding>()
        )
        {
            foreach (string size in problem.Sizes)
            {
                yield return FindIn(
                    size,
                    problem.At,
                    "the binding strips are as wide as the fabric",
                    "the binding",
                    $"{Wording.Measure(problem.StripWidth)} wide, {Wording.Measure(problem.UsableWidth)} long: nothing is left when they are joined",
                    hint: "is the binding's width as it should be? 2 1/4 to 2 1/2 in are usual"
                );
            }
        }
    }
}
