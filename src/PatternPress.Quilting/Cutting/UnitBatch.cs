using PatternPress.Quilting.Techniques;

namespace PatternPress.Quilting.Cutting;

/// <summary>How many units of a class one size needs and makes.</summary>
/// <param name="Form">The finished form at this size.</param>
/// <param name="Recipe">How one batch is made.</param>
/// <param name="Needed">Units in the quilt.</param>
/// <param name="Batches">Batches made: needed ÷ yield, rounded up.</param>
public sealed record UnitBatch(
    UnitShape Shape,
    UnitClass Class,
    UnitForm Form,
    Recipe Recipe,
    long Needed,
    long Batches
)
{
    /// <summary>Units that come out. Strip sets of different rows may yield different numbers; the least counts.</summary>
    public long Made =>
        Recipe.StripSets.IsEmpty
            ? Batches * Recipe.Yield
            : Recipe.StripSets.Min(set =>
                (long)set.SetsFor(Needed) * set.SegmentsPerSet / set.SegmentsPerUnit
            );

    /// <summary>Units left over because a batch yields several.</summary>
    public long Extra => Made - Needed;

    public Derivation Derivation => new($"unit {Class.Label}", [.. Terms()]);

    private IEnumerable<DerivationTerm> Terms()
    {
        yield return new("units needed", "in all blocks of this size", new Quantity.Count(Needed));
        if (Recipe.StripSets.IsEmpty)
        {
            yield return new("units a batch", Recipe.Technique, new Quantity.Count(Recipe.Yield));
            yield return new(
                "batches",
                $"{Needed} ÷ {Recipe.Yield}, rounded up",
                new Quantity.Count(Batches)
            );
        }
        foreach (StripSet set in Recipe.StripSets)
        {
            string fabrics = string.Join(" ", set.Roles.Select(role => Class.Fabrics[role]));
            yield return new(
                $"strip sets {fabrics}",
                $"{Needed} × {set.SegmentsPerUnit} segments ÷ {set.SegmentsPerSet}, rounded up",
                new Quantity.Count(set.SetsFor(Needed))
            );
        }
        yield return new("units made", "all that come out", new Quantity.Count(Made));
    }
}
