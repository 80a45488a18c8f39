using PatternPress.Quilting.Cutting.Planning.Search;

namespace PatternPress.Quilting.Cutting.Planning;

/// <summary>Plans panels of fabric, such as fat quarters: the fewest, with a proved lower bound beside them.</summary>
public static class PanelPlanner
{
    public static PanelResult Plan(PanelProblem problem) => Plan(problem, SearchEffort.Brief);

    /// <summary>The plan a cutter would make by hand is kept where it takes no more panels than any; else the search ends when
    /// a plan's panels equal the lower bound or the effort is spent; the plan says which.</summary>
    public static PanelResult Plan(PanelProblem problem, SearchEffort effort)
    {
        var faults = CutLimits.Check(problem);
        if (!faults.IsEmpty)
            return new PanelResult.Refused(faults);
        if (problem.Pieces.All(piece => piece.Count == 0))
            return new PanelResult.Planned(new([], 0, 0));

        var model = PanelModel.Of(problem);
        var byHand = PanelsByHand.Of(model, model.Demand);
        if (!PanelPricer.CanSearch(model) || Count(byHand) <= model.AreaBound)
            return new PanelResult.Planned(
                new(PanelWriter.Write(model, byHand), model.AreaBound, 0)
            );
        var search = new PanelSearch(model, byHand, effort.Steps);
        search.Run();
        return new PanelResult.Planned(
            new(PanelWriter.Write(model, search.Best), search.Lower, search.Work)
        );
    }

    private static long Count(IEnumerable<CutPanel> panels) => panels.Sum(panel => panel.Times);
}
