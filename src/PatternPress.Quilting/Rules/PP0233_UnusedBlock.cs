using PatternPress.Quilting.Model;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>A block has no coloring, so it cannot be in the quilt.</summary>
public sealed class PP0233_UnusedBlock : CheckingRule
{
    public PP0233_UnusedBlock()
        : base("PP0233", Severity.Warning, "Block that no coloring uses") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        var colored = context
            .Pattern.Colorings.Select(coloring => coloring.Block)
            .ToHashSet(StringComparer.Ordinal);
        foreach (BlockDesign block in context.Pattern.Blocks)
        {
            colored.UnionWith(block.Inner.Select(inner => inner.Key));
        }
        foreach (BlockDesign block in context.Pattern.Blocks.Where(b => !colored.Contains(b.Key)))
        {
            yield return Find(
                block.Span,
                $"block \"{block.Key}\" has no coloring",
                "drawn but never used",
                hint: $"add a coloring for it ({block.Key} {string.Join(" ", block.Parts.Select(p => p.Value + "=…"))}), or delete it"
            );
        }
    }
}
