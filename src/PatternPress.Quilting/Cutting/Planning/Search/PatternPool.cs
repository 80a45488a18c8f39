namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>Every strip found so far, in the order of finding.</summary>
internal sealed class PatternPool
{
    private readonly HashSet<StripPattern> known = [];
    private readonly List<StripPattern> patterns = [];

    public IReadOnlyList<StripPattern> Patterns => patterns;

    public bool Add(StripPattern pattern)
    {
        if (!known.Add(pattern))
            return false;
        patterns.Add(pattern);
        return true;
    }
}
