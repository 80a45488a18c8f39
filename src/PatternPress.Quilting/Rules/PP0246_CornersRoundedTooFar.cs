using PatternPress.Quilting.Resolving;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The corners of a quilt are rounded with a radius of more than half its shorter side.</summary>
public sealed class PP0246_CornersRoundedTooFar : CheckingRule
{
    public PP0246_CornersRoundedTooFar()
        : base("PP0246", Severity.Error, "Corners rounded too far") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (Quilt quilt in context.Quilts)
        {
            Measures.Length shorter = Measures.Length.Min(quilt.Width, quilt.Height);
            if (quilt.Size.Quilt.RoundedCorners is { } radius && radius.Value * 2 > shorter)
            {
                yield return FindIn(
                    quilt.Size.Key,
                    radius.Span,
                    "the corners of the quilt are rounded into each other",
                    "this radius",
                    $"a radius of {Wording.Measure(radius.Value)} at each end of a side of {Wording.Measure(shorter)}",
                    hint: "make it at most half the shorter side"
                );
            }
        }
    }
}
