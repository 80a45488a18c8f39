using PatternPress.Quilting.Colors;
using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules.Neighbors;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Two fabrics that share a seam cannot be told apart in print.</summary>
public sealed class PP0421_IndistinctNeighbors : CheckingRule
{
    // CIEDE2000 is made so that 1 is just noticeable between large flat patches side by side. Patches in a diagram are
    // small and pass through a printer: five times that (our own limit).
    private const double Least = 5;

    public PP0421_IndistinctNeighbors()
        : base("PP0421", Severity.Warning, "Neighboring fabrics that look alike") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        foreach (SizeNeighbors size in context.Neighbors)
        {
            foreach (FabricPair pair in size.Pairs)
            {
                Fabric first = context.Pattern.Fabric(pair.First)!,
                    second = context.Pattern.Fabric(pair.Second)!;
                double difference = ColorDifference.Between(first.Color, second.Color);
                if (difference < Least)
                {
                    yield return FindIn(
                        size.Size,
                        second.Span,
                        $"fabrics \"{first.Key}\" ({first.Name}) and \"{second.Key}\" ({second.Name}) touch and cannot be told apart in print",
                        $"{second.Color}",
                        "",
                        $"They touch {pair.Where}. The colors differ by {difference:0.0} (CIEDE2000); {Least:0} is the least for small patches.",
                        "make one of the two colors lighter or darker",
                        new Label(first.Span, $"{first.Color}")
                    );
                }
            }
        }
    }
}
