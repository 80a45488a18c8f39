using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>A complete plan: every piece asked for is in exactly one panel, none more, none less.</summary>
/// <param name="Layouts">Those of which most are cut first.</param>
/// <param name="LowerBound">No plan takes fewer panels. Proved in whole numbers, so no rounding error can have raised it.
/// </param>
/// <param name="Work">Work units the search spent: the same on every machine.</param>
public sealed record PanelPlan(ImmutableArray<PanelLayout> Layouts, long LowerBound, long Work)
{
    /// <summary>How many panels are cut up.</summary>
    public long Panels { get; } = Layouts.Sum(layout => layout.Copies);

    /// <summary>Whether no plan takes fewer.</summary>
    public bool Proved => LowerBound == Panels;
}

/// <summary>One or more panels that are cut alike.</summary>
/// <param name="Copies">How many, at least one.</param>
/// <param name="Up">Whether its strips run along the fabric the panel was cut from rather than across it.</param>
/// <param name="Strips">Of one panel, tallest first.</param>
public sealed record PanelLayout(long Copies, bool Up, ImmutableArray<Strip> Strips);

/// <summary>A plan, or everything that stands in its way.</summary>
public abstract record PanelResult
{
    private PanelResult() { }

    public sealed record Planned(PanelPlan Plan) : PanelResult;

    public sealed record Refused(ImmutableArray<CutFault> Faults) : PanelResult;
}
