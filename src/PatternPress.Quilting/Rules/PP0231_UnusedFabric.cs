using PatternPress.Quilting.Model;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A fabric is defined and never used: makers would buy it for nothing, or it was forgotten somewhere.</summary>
public sealed class PP0231_UnusedFabric : CheckingRule
{
    public PP0231_UnusedFabric()
        : base("PP0231", Severity.Warning, "Fabric that nothing uses") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        Pattern pattern = context.Pattern;
        var used = new HashSet<string>(StringComparer.Ordinal);
        foreach (Coloring coloring in pattern.Colorings)
        {
            used.UnionWith(coloring.Fabrics.Values);
        }
        foreach (SizeDesign size in pattern.Sizes)
        {
            foreach (Sourced<string>? name in Named(size.Quilt))
            {
                if (name is { } fabric)
                {
                    used.Add(fabric.Value);
                }
            }
        }
        foreach (Fabric fabric in pattern.Fabrics.Where(f => !used.Contains(f.Key)))
        {
            yield return Find(
                fabric.Span,
                $"fabric \"{fabric.Key}\" ({fabric.Name}) is never used",
                "defined but never used",
                "No coloring, sashing, border, binding or backing names it.",
                "delete it, or was it meant somewhere?"
            );
        }
    }

    private static IEnumerable<Sourced<string>?> Named(QuiltDesign quilt)
    {
        foreach (BorderDesign border in quilt.Rounds.Concat(quilt.Borders))
        {
            yield return border.Fabric;
            yield return border.CornerFabric;
            yield return border.Coping?.Fabric;
        }
        yield return quilt.Sashing?.Fabric;
        yield return quilt.Sashing?.Cornerstones;
        yield return quilt.Binding?.Fabric;
        yield return quilt.Backing;
    }
}
