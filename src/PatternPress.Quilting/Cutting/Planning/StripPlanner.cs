using System.Collections.Immutable;

namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>Plans the strips of one fabric: the least total height, with a proved lower bound beside it.</summary>
public static class StripPlanner
{
    public static CutResult Plan(CutProblem problem, CutStyle style)
    {
        var faults = CutLimits.Check(problem);
        if (!faults.IsEmpty)
            return new CutResult.Refused(faults);
        return new CutResult.Planned(StripByHeight.Plan(problem));
    }
}
