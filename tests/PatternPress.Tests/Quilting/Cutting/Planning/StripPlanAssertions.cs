using PatternPress.Quilting.Cutting.Planning;
using Shouldly;

namespace PatternPress.Tests.Quilting.Cutting.Planning;

internal static class StripPlanAssertions
{
    public static void ShouldHold(this StripPlan plan, CutProblem problem) =>
        StripPlanCheck.Find(plan, problem).ShouldBeNull();
}
