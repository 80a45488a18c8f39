using PatternPress.Quilting.Model;
using PatternPress.Quilting.Rules.Neighbors;

namespace PatternPress.Quilting.Rules;

/// <summary>The pairs of touching fabrics, over all sizes, that look alike in some way.</summary>
internal static class AlikePairs
{
    /// <returns>In the order of the fabrics.</returns>
    public static List<(Fabric First, Fabric Second)> Find(
        RuleContext context,
        Func<Color, Color, bool> alike
    )
    {
        Dictionary<string, Fabric> fabrics = context.Pattern.Fabrics.ToDictionary(f => f.Key);
        var seen = new HashSet<(string, string)>();
        var pairs = new List<(Fabric First, Fabric Second)>();
        foreach (SizeNeighbors size in context.Neighbors)
        {
            foreach (FabricPair pair in size.Pairs)
            {
                (Fabric first, Fabric second) = (fabrics[pair.First], fabrics[pair.Second]);
                if (seen.Add((pair.First, pair.Second)) && alike(first.Color, second.Color))
                {
                    pairs.Add((first, second));
                }
            }
        }
        pairs.Sort(
            (a, b) => (a.First.Order, a.Second.Order).CompareTo((b.First.Order, b.Second.Order))
        );
        return pairs;
    }

    /// <summary>"A and B, B and D".</summary>
    public static string Told(IEnumerable<(Fabric First, Fabric Second)> pairs) =>
        string.Join(", ", pairs.Select(pair => $"{pair.First.Key} and {pair.Second.Key}"));
}
