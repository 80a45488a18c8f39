using PatternPress.Quilting.Rules.Prose;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The designer typed a number that agrees with nothing computed.</summary>
public sealed class PP0402_ContradictingNumber : CheckingRule
{
    public PP0402_ContradictingNumber()
        : base("PP0402", Severity.Warning, "Typed number that agrees with nothing") { }

    public override bool NeedsMaking => true;

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach ((TypedFigure figure, FigureMatch match) in ProseFigures.Compare(context))
        {
            if (match.Quote is null)
            {
                yield return Find(
                    figure.Span,
                    $"\"{figure.Text}\" agrees with no computed figure",
                    "typed by hand",
                    match.Meaning,
                    match.Nearest is { } nearest
                        ? $"quote the computed figure; is it {nearest} that is meant?"
                        : "quote the computed figure with {{ }}"
                );
            }
        }
    }
}
