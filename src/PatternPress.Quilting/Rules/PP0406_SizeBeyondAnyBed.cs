using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A size is larger than any bed takes.</summary>
public sealed class PP0406_SizeBeyondAnyBed : CheckingRule
{
    // The largest published sizes: king bedspread 120 × 118 in (Delaware Quilts, "Sizes"), king batting 124 × 120 in.
    private static readonly Length _most = Length.FromInches(124);

    public PP0406_SizeBeyondAnyBed()
        : base("PP0406", Severity.Note, "Size beyond any bed") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (Quilt quilt in context.Quilts)
        {
            if (Length.Max(quilt.Width, quilt.Height) > _most)
            {
                yield return Find(
                    quilt.Size.Span,
                    $"size \"{quilt.Size.Key}\" is larger than any bed takes",
                    $"{Wording.Measure(quilt.Width, quilt.Height)}",
                    $"The largest quilts that are usual, for king beds, measure about {Wording.Measure(_most)}.",
                    "are there too many blocks, or are they too large?"
                );
            }
        }
    }
}
