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
    public long Made => Batches * Recipe.Yield;

    /// <summary>Units left over because a batch yields several.</summary>
    public long Extra => Made - Needed;

    public Derivation Derivation =>
        new(
            $"unit {Class.Label}",
            [
                new("units needed", "in all blocks of this size", new Quantity.Count(Needed)),
                new("units a batch", Recipe.Technique, new Quantity.Count(Recipe.Yield)),
                new(
                    "batches",
                    $"{Needed} ÷ {Recipe.Yield}, rounded up",
                    new Quantity.Count(Batches)
                ),
                new("units made", $"{Batches} × {Recipe.Yield}", new Quantity.Count(Made)),
            ]
        );
}
