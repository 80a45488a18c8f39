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
        var used = pattern
            .Colorings.SelectMany(c => c.Fabrics.Values)
            .ToHashSet(StringComparer.Ordinal);
        foreach (QuiltDesign quilt in pattern.Sizes.Select(size => size.Quilt))
        {
            used.UnionWith(Named(quilt).OfType<Sourced<string>>().Select(name => name.Value));
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

    private static IEnumerable<Sourced<string>?> Named(QuiltDesign quilt) =>
        quilt
            .Rounds.Concat(quilt.Borders)
            .SelectMany(b => new[] { b.Fabric, b.CornerFabric, b.Coping?.Fabric })
            .Append(quilt.Sashing?.Fabric)
            .Append(quilt.Sashing?.Cornerstones)
            .Append(quilt.Binding?.Fabric)
            .Append(quilt.Backing);
}
