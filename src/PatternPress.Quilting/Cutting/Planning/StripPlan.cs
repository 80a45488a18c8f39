using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>A complete plan: every piece asked for is in exactly one strip, none more, none less.</summary>
/// <param name="Style">The style whose rules the plan keeps and for which the bound holds.</param>
/// <param name="Width">Width the strips are cut across, grid units.</param>
/// <param name="Strips">Tallest first.</param>
/// <param name="LowerBound">No plan of this style can have a total height below this, grid units. Proved in whole
/// numbers, so no rounding error can have raised it.</param>
/// <param name="Work">Work units the search spent: the same on every machine.</param>
public sealed record StripPlan(
    CutStyle Style,
    long Width,
    ImmutableArray<Strip> Strips,
    long LowerBound,
    long Work
)
{
    /// <summary>Fabric length that the strips take, grid units.</summary>
    public long Total { get; } =
        Strips.Where(strip => strip.From is null).Sum(strip => strip.Total);

    /// <summary>How many strips are cut, copies counted.</summary>
    public long StripCount { get; } = Strips.Sum(strip => strip.Copies);

    /// <summary>Whether no plan of this style is shorter.</summary>
    public bool Proved => LowerBound == Total;

    /// <summary>How much shorter a plan might still be; 0 when proved.</summary>
    public long Gap => Total - LowerBound;
}
