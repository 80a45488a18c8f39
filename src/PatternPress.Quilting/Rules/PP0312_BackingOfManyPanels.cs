using PatternPress.Quilting.Cutting;
using PatternPress.Source;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A backing is pieced of more than three panels.</summary>
public sealed class PP0312_BackingOfManyPanels : CheckingRule
{
    // Three panels of 40 in back a king-size quilt (handbooks' tables go to three widths for 120 × 120 in).
    private const int Most = 3;

    public PP0312_BackingOfManyPanels()
        : base("PP0312", Severity.Note, "Backing of many panels") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (SizeMaking size in context.Making.Sizes)
        {
            if (size.Backing is { } backing && backing.Panels > Most)
            {
                yield return FindIn(
                    size.Key,
                    size.Quilt.Size.Quilt.Backing?.Span ?? size.Quilt.Size.Span,
                    "the backing is pieced of many panels",
                    "the backing",
                    $"{backing.Panels} panels of {Wording.Measure(backing.FabricWidth)} for {Wording.Measure(backing.Width, backing.Height)}",
                    hint: "give the width of a wide backing fabric (backing: {fabric: …, width: 108 in})"
                );
            }
        }
    }
}
