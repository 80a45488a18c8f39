using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A binding strip is too narrow to fold double around the edge.</summary>
public sealed class PP0313_NarrowBinding : CheckingRule
{
    public PP0313_NarrowBinding()
        : base("PP0313", Severity.Warning, "Narrow binding") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (SizeMaking size in context.Making.Sizes)
        {
            if (size.Binding is not { } binding)
            {
                continue;
            }
            // Double-fold binding that finishes one seam wide: 4 × finished + 2 × seam + 1/4 in for the turn of the
            // batting (generations-quilt-patterns.com, "Bias binding"); with a 1/4 in seam 1 3/4 in.
            Length least = (size.Quilt.House.Seam * 6) + Length.FromInches(0, 1, 4);
            if (binding.StripWidth < least)
            {
                yield return FindIn(
                    size.Key,
                    size.Quilt.Size.Quilt.Binding?.Span ?? Span.None,
                    "the binding strips are too narrow for double-fold binding",
                    "the binding",
                    $"{Wording.Measure(binding.StripWidth)} cut, at least {Wording.Measure(least)} needed",
                    "Folded double, a strip needs four times the finished width, two seams and 1/4 in for the thickness of the quilt.",
                    "cut wider strips; 2 1/4 to 2 1/2 in are usual"
                );
            }
        }
    }
}
