using PatternPress.Quilting.Resolving;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>The parts of a block go round each other, so that one seam is sewn halfway first and finished last.</summary>
public sealed class PP0284_PartialSeams : CheckingRule
{
    public PP0284_PartialSeams()
        : base("PP0284", Severity.Note, "Partial seams") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        var known = new Dictionary<Block, SewingOrder.Around?>();
        SewingOrder.Around? AroundOf(Block block)
        {
            if (!known.TryGetValue(block, out SewingOrder.Around? around))
            {
                known.Add(block, around = Around(SewingOrder.Of(block)));
            }
            return around;
        }
        foreach (Quilt quilt in context.Quilts)
        {
            var seen = new HashSet<Block>();
            foreach (ColoredBlock colored in context.BlocksOf(quilt))
            {
                if (
                    colored.Block is not { Units.Length: > 3 } block
                    || !seen.Add(block)
                    || AroundOf(block) is not { } around
                )
                {
                    continue;
                }
                string parts = string.Join(
                    ", ",
                    around.Parts.Select(part =>
                        string.Concat(
                            part.Units().Select(i => block.Units[i].Region.Design.Letter).Distinct()
                        )
                    )
                );
                Finding found = FindIn(
                    quilt.Size.Key,
                    block.Design.Span,
                    $"block \"{block.Key}\" is sewn with a partial seam",
                    "its parts go round each other",
                    $"sewn on in this order: {parts}",
                    "No seam runs from edge to edge: the first is sewn halfway, the others follow one after the other, then the first is finished. The steps say so.",
                    "change the map so that a line runs through it from edge to edge, if straight seams are wanted"
                );
                yield return PP0281_SetInSeams.IsForBeginners(context)
                    ? found with
                    {
                        Diagnostic = found.Diagnostic with { Severity = Severity.Warning },
                    }
                    : found;
            }
        }
    }

    private static SewingOrder.Around? Around(SewingOrder order) =>
        order switch
        {
            SewingOrder.Around around => around,
            SewingOrder.Group group => group
                .Parts.Select(Around)
                .FirstOrDefault(found => found is not null),
            _ => null,
        };
}
