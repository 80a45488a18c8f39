namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>All strips of one height that obey the same rule of mixing.</summary>
/// <param name="Run">Index of the run its pieces come from.</param>
/// <param name="First">The tallest placement it may hold: the run from there to its end.</param>
/// <param name="Cost">Fabric length one strip takes, grid units.</param>
/// <param name="Cap">How many strips of the family and of taller ones of its kind a plan may have together.</param>
internal sealed record StripFamily(int Run, int First, long Height, long Cost, long Cap)
{
    /// <summary>Index of the remainder its strips are cut from; -1 for the fabric.</summary>
    public int From { get; init; } = -1;
}
