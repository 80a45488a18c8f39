using PatternPress.Quilting.Model;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Two fabrics have one name, so a shopping list would show it twice.</summary>
public sealed class PP0234_FabricsOfOneName : CheckingRule
{
    public PP0234_FabricsOfOneName()
        : base("PP0234", Severity.Warning, "Fabrics of one name") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        var first = new Dictionary<string, Fabric>(StringComparer.OrdinalIgnoreCase);
        foreach (Fabric fabric in context.Pattern.Fabrics)
        {
            if (!first.TryGetValue(fabric.Name, out Fabric? earlier))
            {
                first.Add(fabric.Name, fabric);
                continue;
            }
            yield return Find(
                fabric.Span,
                $"fabrics \"{earlier.Key}\" and \"{fabric.Key}\" are both called \"{fabric.Name}\"",
                "the same name again",
                "The requirements list both, and nobody can tell which is which.",
                "if they are one fabric, use one letter; else give each its own name",
                new Label(earlier.Span, "the first one")
            );
        }
    }
}
