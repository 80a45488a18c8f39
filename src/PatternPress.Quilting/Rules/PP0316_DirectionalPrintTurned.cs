using PatternPress.Quilting.Model;
using PatternPress.Quilting.Resolving;
using PatternPress.Source.Diagnostics;

namespace PatternPress.Quilting.Rules;

/// <summary>Pieces of a directional print end up pointing different ways in the quilt.</summary>
public sealed class PP0316_DirectionalPrintTurned : CheckingRule
{
    public PP0316_DirectionalPrintTurned()
        : base("PP0316", Severity.Warning, "Directional print that is turned") { }

    public override IEnumerable<Finding> Check(RuleContext context)
    {
        var directional = context
            .Pattern.Fabrics.SelectWhere(fabric => fabric.Directional, fabric => fabric.Key)
            .ToHashSet(StringComparer.Ordinal);
        if (directional.Count == 0)
        {
            yield break;
        }
        foreach (Quilt quilt in context.Quilts)
        {
            var turns = new SortedDictionary<string, SortedSet<int>>(StringComparer.Ordinal);
            foreach ((ColoredBlock block, int quarters) in Turned(quilt))
            {
                foreach ((string fabric, int turn) in Pieces(block))
                {
                    if (directional.Contains(fabric))
                    {
                        if (!turns.TryGetValue(fabric, out SortedSet<int>? set))
                        {
                            turns.Add(fabric, set = []);
                        }
                        set.Add((quarters + turn) % 4);
                    }
                }
            }
            foreach ((string key, SortedSet<int> ways) in turns.Where(t => t.Value.Count > 1))
            {
                Fabric fabric = context.Pattern.Fabric(key)!;
                yield return FindIn(
                    quilt.Size.Key,
                    fabric.Span,
                    $"the directional print \"{key}\" ({fabric.Name}) points {ways.Count} ways in the blocks",
                    "a print with an up",
                    $"turned by {string.Join(", ", ways.Select(w => $"{w * 90}°"))}",
                    hint: "use a print without a direction here, draw the units and blocks unturned, or say directional: no if it may point any way"
                );
            }
        }
    }

    private static IEnumerable<(ColoredBlock Block, int Quarters)> Turned(Quilt quilt) =>
        quilt.AllBlocks().Select(p => (p.Block, p.Turn.Quarters)).Distinct();

    private static IEnumerable<(string Fabric, int Quarters)> Pieces(ColoredBlock block)
    {
        if (block.Block is null)
        {
            yield return (block.Coloring.Fabrics[Coloring.PlainPart], 0);
            yield break;
        }
        foreach (BlockUnit unit in block.Block.Units)
        {
            foreach (string fabric in block.FabricsOf(unit))
            {
                yield return (fabric, unit.Drawn.Turn.Quarters);
            }
        }
    }
}
