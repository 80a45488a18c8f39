using PatternPress.Quilting.Cutting;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>No method that the house allows makes a unit.</summary>
public sealed class PP0301_UnitWithoutMethod : CheckingRule
{
    public PP0301_UnitWithoutMethod()
        : base("PP0301", Severity.Error, "Unit that no method makes") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (
            MakingProblem.NoTechnique problem in context.Making.Problems.OfType<MakingProblem.NoTechnique>()
        )
        {
            string unit =
                $"{problem.Form.Kind.Name}, {Wording.Measure(problem.Form.Width, problem.Form.Height)} finished";
            string reasons = string.Join(
                "; ",
                problem.Reasons.Select(r => $"{r.Technique}: {r.Reason}")
            );
            foreach (string size in problem.Sizes)
            {
                yield return FindIn(
                    size,
                    problem.At,
                    $"no method makes the {problem.Form.Kind.Name} {Wording.Uses(problem.Uses)}",
                    $"a {problem.Form.Kind.Name}",
                    reasons.Length == 0 ? unit : $"{unit}. {reasons}",
                    hint: problem.Reasons.Length == 0
                        ? "the house rules exclude every method: shorten the list under without"
                        : "change the size of the block, or allow another method"
                );
            }
        }
    }
}
