using PatternPress.Quilting.Cutting;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The method that the designer asks for does not make the unit.</summary>
public sealed class PP0302_MethodThatDoesNotFit : CheckingRule
{
    public PP0302_MethodThatDoesNotFit()
        : base("PP0302", Severity.Error, "Method that does not fit the unit") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (MakingProblem problem in context.Making.Problems)
        {
            switch (problem)
            {
                case MakingProblem.MethodDoesNotFit p:
                    foreach (string size in p.Sizes)
                    {
                        yield return FindIn(
                            size,
                            p.At,
                            $"\"{p.Technique.Keyword}\" does not make the {p.Form.Kind.Name} {Wording.Uses(p.Uses)}",
                            "asked for here",
                            p.Reason,
                            hint: "name another method, or leave the choice open"
                        );
                    }
                    break;
                case MakingProblem.UnknownMethod p:
                    foreach (string size in p.Sizes)
                    {
                        yield return FindIn(
                            size,
                            p.At,
                            $"\"{p.Method}\" is not a method of making a {p.Kind.Name}",
                            "asked for here",
                            "",
                            hint: Wording.DidYouMean(p.Method, p.Known, "methods")
                        );
                    }
                    break;
            }
        }
    }
}
