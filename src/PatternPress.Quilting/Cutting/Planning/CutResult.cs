using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>A plan, or everything that stands in its way.</summary>
public abstract record CutResult
{
    private CutResult() { }

    public sealed record Planned(StripPlan Plan) : CutResult;

    public sealed record Refused(ImmutableArray<CutFault> Faults) : CutResult;
}
