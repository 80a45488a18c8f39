namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>Least and most that a tally may come to, in the tally's units.</summary>
internal sealed record Limit(Tally Tally, long Least, long Most)
{
    public const long None = long.MaxValue;
}
