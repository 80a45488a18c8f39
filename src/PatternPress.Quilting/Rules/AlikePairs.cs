using PatternPress.Quilting.Model;

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
        return
        [
            .. context
                .Neighbors.SelectMany(size => size.Pairs)
                .Select(pair => (First: fabrics[pair.First], Second: fabrics[pair.Second]))
                .Distinct()
                .Where(pair => alike(pair.First.Color, pair.Second.Color))
                .OrderBy(pair => pair.First.Order)
                .ThenBy(pair => pair.Second.Order),
        ];
    }

    /// <summary>"A and B, B and D".</summary>
    public static string Told(IEnumerable<(Fabric First, Fabric Second)> pairs) =>
        string.Join(", ", pairs.Select(pair => $"{pair.First.Key} and {pair.Second.Key}"));
}
