using System.Collections.Immutable;
using PatternPress.Quilting.Finishing;
using PatternPress.Quilting.Resolving;

namespace PatternPress.Quilting.Cutting;

/// <summary>All that is made, cut and bought for one size.</summary>
/// <param name="Units">In order of label.</param>
/// <param name="Cuts">In order of fabric and id.</param>
/// <param name="Joined">Strips joined end to end for borders and sashing rows.</param>
/// <param name="Fabrics">A plan for each fabric of the top, in the order of the source; then binding, if apart.</param>
public sealed record SizeMaking(
    Quilt Quilt,
    ImmutableArray<UnitBatch> Units,
    ImmutableArray<Cut> Cuts,
    ImmutableArray<JoinedStrips> Joined,
    ImmutableArray<FabricPlan> Fabrics,
    BindingPlan? Binding,
    BackingPlan? Backing,
    BattingPlan? Batting
)
{
    /// <summary>Plans of the same pieces cut from panels, for the fabrics of which the pattern promises that it can be done.
    /// </summary>
    public ImmutableArray<FabricPlan> Substitutes { get; init; } = [];

    /// <summary>Why it cannot be done.</summary>
    public ImmutableArray<PieceProblem> SubstituteProblems { get; init; } = [];

    public string Key => Quilt.Size.Key;

    /// <summary>How often a block is made.</summary>
    public long CountOf(BlockMakeup block) =>
        PartSorting
            .Count(Quilt)
            .Where(b => b.Block.Key == block.Coloring && b.Number == block.Number)
            .Sum(b => b.Count);

    public FabricPlan? Fabric(string key, FabricUse use = FabricUse.Top) =>
        Fabrics.FirstOrDefault(plan => plan.Fabric == key && plan.Use == use);
}
