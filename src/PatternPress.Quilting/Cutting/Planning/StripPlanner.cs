using PatternPress.Quilting.Cutting.Planning.Search;

namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>Plans the strips of one fabric: the least total height, with a proved lower bound beside it.</summary>
public static class StripPlanner
{
    public static CutResult Plan(CutProblem problem, CutStyle style) =>
        Plan(problem, style, SearchEffort.Usual);

    /// <summary>Two-stage plans: strips across the whole width, cut into pieces, a shorter piece trimmed. The search
    /// ends when a plan's total equals the lower bound or the effort is spent; the plan says which.</summary>
    /// <param name="settled">Ends the search, too, where it is said of the lower bound.</param>
    public static CutResult Plan(
        CutProblem problem,
        CutStyle style,
        SearchEffort effort,
        Func<long, bool>? settled = null
    )
    {
        var faults = CutLimits.Check(problem);
        if (!faults.IsEmpty)
            return new CutResult.Refused(faults);
        if (problem.Pieces.All(piece => piece.Count == 0))
            return new CutResult.Planned(new(style, problem.Width, [], 0, 0));

        var model = StripModel.Of(problem, style);
        if (!PatternPricer.CanSearch(model))
        {
            var byHand = StripWriter.Write(model, GreedyFill.Of(model, model.Everything));
            return new CutResult.Planned(new(style, problem.Width, byHand, model.QuickBound, 0));
        }
        var search = new StripSearch(model, effort.Steps, settled);
        search.Run();
        var fewer = new FewerLayouts(model, search.Best, effort.Steps / 50);
        var strips = StripWriter.Write(model, fewer.Find());
        return new CutResult.Planned(
            new(style, problem.Width, strips, search.Lower, search.Work + fewer.Work)
        );
    }
}
