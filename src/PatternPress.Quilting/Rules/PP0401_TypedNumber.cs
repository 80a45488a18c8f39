using PatternPress.Quilting.Rules.Prose;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The designer typed a number that is computed: it will be wrong in the next edition.</summary>
public sealed class PP0401_TypedNumber : CheckingRule
{
    public PP0401_TypedNumber()
        : base("PP0401", Severity.Warning, "Typed number that is computed") { }

    public override bool NeedsMaking => true;

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach ((TypedFigure figure, FigureMatch match) in ProseFigures.Compare(context))
        {
            if (match.Quote is { } quote)
            {
                yield return Find(
                    figure.Span,
                    $"\"{figure.Text}\" is typed where the build can compute it",
                    "typed by hand",
                    $"It is {match.Meaning}. A typed number stays as it is when the pattern changes.",
                    $"write {quote} instead"
                );
            }
        }
    }
}
