using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Cutting;

/// <summary>Turns a cutting list of one fabric into strips and yardage. Sizes are planned side by side: it must bear being
/// asked by two threads at once.</summary>
public interface ICuttingPlanner
{
    FabricPlanning Plan(CuttingList list);

    /// <summary>Whether less is bought for one list than for the other, or only that one can be planned at all.</summary>
    bool TakesLess(CuttingList list, CuttingList than) => IsLess(Plan(list), Plan(than));

    /// <summary>Whether less is bought for one than for the other, or only that one is a plan.</summary>
    static bool IsLess(FabricPlanning one, FabricPlanning other) =>
        one is FabricPlanning.Planned planned
        && (
            other is not FabricPlanning.Planned than
            || planned.Plan.Yardage.ToBuy < than.Plan.Yardage.ToBuy
        );
}

/// <summary>Everything one size cuts from one fabric.</summary>
/// <param name="Cuts">Without those of count 0.</param>
public sealed record CuttingList(
    string Fabric,
    FabricUse Use,
    Length UsableWidth,
    House House,
    ImmutableArray<Cut> Cuts
)
{
    /// <summary>The panels it is bought in; null for fabric by the yard.</summary>
    public PanelStock? Panel { get; init; }

    /// <summary>What a strip across the fabric gives once its ends are squared.</summary>
    public Length StripLength => House.StripLength(UsableWidth);
}

/// <summary>A plan, or all that stands in its way.</summary>
public abstract record FabricPlanning
{
    private FabricPlanning() { }

    public sealed record Planned(FabricPlan Plan) : FabricPlanning;

    public sealed record Refused(ImmutableArray<PieceProblem> Problems) : FabricPlanning;
}

/// <summary>A piece that cannot be cut from its fabric.</summary>
/// <param name="Value">The number at fault, where it is a length.</param>
/// <param name="Limit">What it was held against.</param>
/// <param name="UsableWidth">Of its fabric.</param>
public sealed record PieceProblem(
    Cut Cut,
    PieceProblemKind Kind,
    Length Value,
    Length Limit,
    Length UsableWidth
)
{
    /// <summary>The panel that is too small for it; null for fabric by the yard.</summary>
    public PanelStock? Panel { get; init; }

    /// <summary>How much is missing or too much.</summary>
    public Length By => Value - Limit;
}

public enum PieceProblemKind
{
    /// <summary>It is wider than the fabric, even turned where it may be turned.</summary>
    WiderThanFabric,

    /// <summary>It is larger than the panel it is to be cut from, even turned where it may be turned.</summary>
    LargerThanPanel,

    /// <summary>Its width or height is not above zero.</summary>
    NoSize,

    /// <summary>More pieces, or larger ones, than are computed with.</summary>
    BeyondLimit,
}
