using PatternPress.Quilting.Colors;
using PatternPress.Quilting.Model;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Fabrics that share a seam look alike in a black and white print; letters and hatches must carry it.</summary>
public sealed class PP0422_IndistinctInGrey : CheckingRule
{
    private const double Least = 5;

    public PP0422_IndistinctInGrey()
        : base("PP0422", Severity.Note, "Neighboring fabrics alike in grey") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        // Pairs that are alike in color too have their own warning.
        List<(Fabric First, Fabric Second)> alike = AlikePairs.Find(
            context,
            (a, b) => ColorDifference.Between(a, b) >= Least && ColorDifference.InGrey(a, b) < Least
        );
        if (alike.Count > 0)
        {
            yield return Find(
                alike[0].Second.Span,
                $"{Wording.Count(alike.Count, "pair", "pairs")} of neighboring fabrics look alike in a black and white print",
                "such as this fabric",
                $"{AlikePairs.Told(alike)}. In black and white only their letters and hatches tell them apart.",
                "nothing to do if that is enough; else make one of each pair lighter or darker",
                new Label(alike[0].First.Span, "and this one")
            );
        }
    }
}
