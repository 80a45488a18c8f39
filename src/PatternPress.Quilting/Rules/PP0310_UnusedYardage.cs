using PatternPress.Quilting.Cutting;
using PatternPress.Quilting.Measures;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Much of the fabric that makers must buy is not used.</summary>
public sealed class PP0310_UnusedYardage : CheckingRule
{
    // Strip ends, squaring and rounding to an eighth of a yard cost a fifth or so of most fabrics. Twice that is worth a
    // word, from one yard on; less fabric is always mostly rounding (our own limits).
    private const double Share = 0.4;

    public PP0310_UnusedYardage()
        : base("PP0310", Severity.Note, "Much unused fabric") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        // With something left out, the rest says nothing about the whole.
        if (context.Making.Problems.Length > 0)
        {
            yield break;
        }
        foreach (SizeMaking size in context.Making.Sizes)
        {
            foreach (FabricPlan plan in size.Fabrics)
            {
                Length bought = plan.Yardage.ToBuy;
                if (bought < Length.FromYards(Rational.One))
                {
                    continue;
                }
                Area used = plan
                    .Strips.SelectMany(strip =>
                        strip.Segments.Select(segment =>
                            segment.Width * segment.Height * (segment.PiecesPerStrip * strip.Count)
                        )
                    )
                    .Aggregate(Area.Zero, (sum, area) => sum + area);
                Area whole = bought * plan.UsableWidth;
                double unused = 1 - (used.SquareInches.ToDouble() / whole.SquareInches.ToDouble());
                if (unused > Share)
                {
                    yield return FindIn(
                        size.Key,
                        context.Pattern.Fabric(plan.Fabric)!.Span,
                        $"much of fabric \"{plan.Fabric}\" is left over",
                        "this fabric",
                        $"{Wording.PerCent(unused)} of {Wording.Measure(plan.Yardage)} is not used",
                        hint: "let pieces share strips (plan: thrifty under house), or use this fabric for a border or the binding too"
                    );
                }
            }
        }
    }
}
