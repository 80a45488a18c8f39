using PatternPress.Quilting.Resolving;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Two sizes finish at the same measure: one of them was copied and not changed.</summary>
public sealed class PP0241_SizesAlike : CheckingRule
{
    public PP0241_SizesAlike()
        : base("PP0241", Severity.Warning, "Sizes that are alike") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        for (int i = 0; i < context.Quilts.Length; i++)
        {
            Quilt quilt = context.Quilts[i];
            Quilt? same = context
                .Quilts.Take(i)
                .FirstOrDefault(q => q.Width == quilt.Width && q.Height == quilt.Height);
            if (same is not null)
            {
                yield return Find(
                    quilt.Size.Span,
                    $"sizes \"{same.Size.Key}\" and \"{quilt.Size.Key}\" both finish at {Wording.Measure(quilt.Width, quilt.Height)}",
                    "as large as the other",
                    hint: "change the blocks or borders of one, or delete it",
                    others: new Label(same.Size.Span, "the first of them")
                );
            }
        }
    }
}
