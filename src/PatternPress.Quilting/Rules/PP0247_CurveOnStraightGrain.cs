using PatternPress.Quilting.Model;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A quilt with rounded corners is bound with strips on the straight grain, which do not lie flat around a curve.</summary>
public sealed class PP0247_CurveOnStraightGrain : CheckingRule
{
    public PP0247_CurveOnStraightGrain()
        : base("PP0247", Severity.Warning, "Curved edge bound on the straight grain") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (SizeDesign size in context.Pattern.Sizes)
        {
            if (
                size.Quilt.RoundedCorners is { } radius
                && size.Quilt.Binding is { Bias: false } binding
            )
            {
                yield return FindIn(
                    size.Key,
                    binding.Span,
                    "binding on the straight grain goes around rounded corners",
                    "this binding",
                    "",
                    "It does not stretch, and stands up or puckers along the curve.",
                    "cut it on the bias (binding: {fabric: B, cut: bias})",
                    new Label(radius.Span, "the corners are rounded here")
                );
            }
        }
    }
}
