using PatternPress.Quilting.Cutting;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>No packaged batting is large enough for a size.</summary>
public sealed class PP0317_BattingBeyondPackages : CheckingRule
{
    public PP0317_BattingBeyondPackages()
        : base("PP0317", Severity.Note, "Batting larger than any package") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (SizeMaking size in context.Making.Sizes)
        {
            if (size.Batting is { Package: null } batting)
            {
                yield return FindIn(
                    size.Key,
                    size.Quilt.Size.Span,
                    "no packaged batting is large enough",
                    "this size",
                    $"{Wording.Measure(batting.Width, batting.Height)} needed",
                    hint: "makers will buy batting by the yard or join two; is the size as it should be?"
                );
            }
        }
    }
}
