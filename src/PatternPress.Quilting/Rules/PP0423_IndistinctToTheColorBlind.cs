using PatternPress.Quilting.Colors;
using PatternPress.Quilting.Model;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Fabrics that share a seam look alike to someone with a colour-vision deficiency.</summary>
public sealed class PP0423_IndistinctToTheColorBlind : CheckingRule
{
    private const double Least = 5;

    public PP0423_IndistinctToTheColorBlind()
        : base("PP0423", Severity.Note, "Neighboring fabrics alike to the color-blind") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        var lines = new List<string>();
        (Fabric First, Fabric Second)? example = null;
        foreach (
            (ColorVision kind, string name) in new[]
            {
                (ColorVision.Protan, "without red cones"),
                (ColorVision.Deutan, "without green cones"),
                (ColorVision.Tritan, "without blue cones"),
            }
        )
        {
            List<(Fabric First, Fabric Second)> alike = AlikePairs.Find(
                context,
                (a, b) =>
                    // Pairs that are alike in color or in grey have their own findings.
                    ColorDifference.Between(a, b) >= Least
                    && ColorDifference.InGrey(a, b) >= Least
                    && ColorDifference.Between(
                        ColorVisionSimulation.Seen(a, kind),
                        ColorVisionSimulation.Seen(b, kind)
                    ) < Least
            );
            if (alike.Count > 0)
            {
                example ??= alike[0];
                lines.Add($"{name}: {AlikePairs.Told(alike)}");
            }
        }
        if (example is { } pair)
        {
            yield return Find(
                pair.Second.Span,
                "some neighboring fabrics look alike to a color-blind maker",
                "such as this fabric",
                $"Seen {string.Join("; ", lines)}. Their letters and hatches tell them apart.",
                "nothing to do if that is enough; else make one of each pair lighter or darker",
                new Label(pair.First.Span, "and this one")
            );
        }
    }
}
