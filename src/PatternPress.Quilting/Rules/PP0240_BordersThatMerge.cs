using PatternPress.Quilting.Model;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Two borders in a row are of one fabric: they look like one border and cost a seam more.</summary>
public sealed class PP0240_BordersThatMerge : CheckingRule
{
    public PP0240_BordersThatMerge()
        : base("PP0240", Severity.Warning, "Borders that merge") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (SizeDesign size in context.Pattern.Sizes)
        {
            for (int i = 1; i < size.Quilt.Borders.Length; i++)
            {
                BorderDesign inner = size.Quilt.Borders[i - 1],
                    outer = size.Quilt.Borders[i];
                // Corner squares set the two apart.
                bool apart =
                    inner.Corners == BorderCorners.Squares
                    || outer.Corners == BorderCorners.Squares;
                if (inner.Fabric.Value == outer.Fabric.Value && !apart)
                {
                    yield return FindIn(
                        size.Key,
                        outer.Span,
                        $"borders {i} and {i + 1} are both of fabric \"{outer.Fabric.Value}\" and look like one",
                        "the same fabric again",
                        "",
                        hint: $"make it one border of {Wording.Measure(inner.Width + outer.Width)}, or choose another fabric",
                        others: new Label(inner.Span, "the border inside it")
                    );
                }
            }
        }
    }
}
