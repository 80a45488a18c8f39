namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>Least and most of the strips for which a condition holds.</summary>
internal readonly record struct Limit(Condition Condition, long Least, long Most)
{
    public const long None = long.MaxValue;
}
