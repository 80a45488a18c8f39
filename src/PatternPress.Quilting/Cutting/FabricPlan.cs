using System.Collections.Immutable;
using PatternPress.Quilting.Measures;
using PatternPress.Quilting.Model;

namespace PatternPress.Quilting.Cutting;

/// <summary>How one fabric is cut for one size, and how much of it that takes.</summary>
/// <param name="Fabric">Fabric key.</param>
/// <param name="Use">For the top, or binding bought apart.</param>
/// <param name="UsableWidth">The width of fabric it is planned for.</param>
/// <param name="StripLength">What each strip across that width gives once its ends are squared.</param>
/// <param name="Style">The style the plan keeps.</param>
/// <param name="Strips">In the order a person cuts them.</param>
/// <param name="Squaring">Allowance for straightening the cut edge.</param>
/// <param name="Yardage">Strips and squaring, exact and as bought.</param>
/// <param name="LowerBound">No plan of this style takes a shorter length of strips. The plan itself may take more where that
/// buys the same and is easier to follow.</param>
/// <param name="Derivation">How the yardage came about.</param>
public sealed record FabricPlan(
    string Fabric,
    FabricUse Use,
    Length UsableWidth,
    Length StripLength,
    PlanStyle Style,
    ImmutableArray<PlannedStrip> Strips,
    Length Squaring,
    Yardage Yardage,
    Length LowerBound,
    Derivation Derivation
)
{
    /// <summary>The panels it is cut from; null for fabric by the yard. Bought in panels it has no yardage.</summary>
    public PanelUse? Panels { get; init; }

    /// <summary>Length of fabric that the strips take.</summary>
    public Length StripsLength =>
        Strips
            .Where(strip => strip.Beside is null)
            .Aggregate(Length.Zero, (sum, strip) => sum + (strip.Height * strip.Count));
}

/// <summary>What a length of fabric is bought for.</summary>
public enum FabricUse
{
    /// <summary>Blocks, sashing and borders.</summary>
    Top,

    /// <summary>Binding, on a line of its own.</summary>
    Binding,
}

/// <summary>Strips across the usable width that are cut alike.</summary>
/// <param name="Height">Cut height of each.</param>
/// <param name="Count">How many are cut alike.</param>
/// <param name="Segments">From the first end on: what each strip is cut into. A segment lower than the strip is
/// trimmed from its end.</param>
/// <param name="End">What is left at the end of each.</param>
public sealed record PlannedStrip(
    Length Height,
    long Count,
    ImmutableArray<PlannedSegment> Segments,
    Length End
)
{
    /// <summary>The strip of long pieces, by its index in the plan, beside which it is cut: it takes no length of its own.
    /// Null for a strip across the whole width.</summary>
    public int? Beside { get; init; }

    /// <summary>The panel it is cut from; null for a strip of fabric by the yard.</summary>
    public PanelShare? Panel { get; init; }
}

/// <summary>Strips of a panel that are cut alike.</summary>
/// <param name="Layout">Index among the layouts of panels.</param>
/// <param name="Strips">How many from one panel.</param>
public sealed record PanelShare(int Layout, long Strips);

/// <summary>A run of equal pieces side by side in a strip.</summary>
/// <param name="Cuts">Ids of the cuts of this size; several where equal sizes are cut together.</param>
/// <param name="PiecesPerStrip">How many are cut from each strip.</param>
/// <param name="Width">Of one piece as it lies along the strip.</param>
/// <param name="Height">Of one piece as it lies.</param>
/// <param name="Turned">Whether it lies with width and height exchanged.</param>
public sealed record PlannedSegment(
    ImmutableArray<string> Cuts,
    long PiecesPerStrip,
    Length Width,
    Length Height,
    bool Turned
);
