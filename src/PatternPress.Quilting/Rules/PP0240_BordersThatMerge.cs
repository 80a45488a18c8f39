using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Two borders in a row are of one fabric: they look like one border and cost a seam more.</summary>
public sealed class PP0240_BordersThatMerge : CheckingRule
{
    public PP0240_BordersThatMerge()
        : base("PP0240", Severity.Warning, "Borders that merge") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (Quilt quilt in context.Quilts)
        {
            for (int i = 1; i < quilt.Borders.Length; i++)
            {
                Border inner = quilt.Borders[i - 1],
                    outer = quilt.Borders[i];
                // What is in the corners sets the two apart; a coping strip may hide beside a border of its fabric.
                bool apart =
                    HasCorners(inner) || HasCorners(outer) || inner.IsCoping || outer.IsCoping;
                if (
                    outer.Design.Fabric is { } fabric
                    && inner.Design.Fabric?.Value == fabric.Value
                    && !apart
                )
                {
                    yield return FindIn(
                        quilt.Size.Key,
                        outer.Design.Span,
                        $"borders {inner.Number} and {outer.Number} are both of fabric \"{fabric.Value}\" and look like one",
                        "the same fabric again",
                        "",
                        hint: inner.Widths.Even is { } one && outer.Widths.Even is { } two
                            ? $"make it one border of {Wording.Measure(one + two)}, or choose another fabric"
                            : "make it one border, or choose another fabric",
                        others: new Label(inner.Design.Span, "the border inside it")
                    );
                }
            }
        }
    }

    private static bool HasCorners(Border border) =>
        border.Design.Corners is BorderCorners.Squares or BorderCorners.Blocks;
}
