using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Resolving;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The backing reaches too little beyond the top.</summary>
public sealed class PP0311_ShortOverhang : CheckingRule
{
    // Published advice runs from 2 to 4 in on every side: St. Croix quilters, "Quilt backing" (2 to 3 in); class sheets
    // and magazines (4 in).
    private static readonly Length _least = Length.FromInches(2);

    public PP0311_ShortOverhang()
        : base("PP0311", Severity.Warning, "Backing with a short overhang") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (Quilt quilt in context.Quilts)
        {
            if (quilt.Size.Quilt.Backing is { } backing && quilt.House.BackingOverhang < _least)
            {
                yield return FindIn(
                    quilt.Size.Key,
                    backing.Span,
                    "the backing reaches too little beyond the top",
                    "the backing",
                    $"{Wording.Measure(quilt.House.BackingOverhang)} on every side",
                    $"Quilting draws a top in and shifts it; {Wording.Measure(_least)} on every side is the least that is usual.",
                    "raise the overhang"
                );
            }
        }
    }
}
