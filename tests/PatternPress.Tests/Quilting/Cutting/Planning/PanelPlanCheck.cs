using PatternPress.Quilting.Cutting.Planning;

namespace PatternPress.Tests.Quilting.Cutting.Planning;

/// <summary>Lays every piece of a plan of panels out as a rectangle on the fabric and looks at the rectangles alone: inside
/// the panel, none over another, of the size and in the direction asked for, as many as were asked for. Uses nothing of the
/// planner's arithmetic.</summary>
internal static class PanelPlanCheck
{
    private sealed record Laid(int Id, long Left, long Top, long Right, long Bottom);

    /// <summary>The first thing wrong with the plan, or null.</summary>
    public static string? Find(PanelPlan plan, PanelProblem problem)
    {
        var asked = problem.Pieces.ToDictionary(piece => piece.Id);
        var made = problem.Pieces.ToDictionary(piece => piece.Id, _ => 0L);
        long panels = 0;
        foreach (var layout in plan.Layouts)
        {
            if (layout.Copies < 1 || layout.Strips.IsEmpty)
                return $"an empty layout, cut {layout.Copies} times";
            panels += layout.Copies;
            var laid = new List<Laid>();
            long across = 0;
            foreach (var strip in layout.Strips)
                for (var copy = 0; copy < strip.Copies; copy++)
                {
                    long along = 0;
                    foreach (var segment in strip.Segments)
                        for (var n = 0; n < segment.Count; n++)
                        {
                            if (segment.Height > strip.Height)
                                return $"piece {segment.PieceId} leaves its strip";
                            laid.Add(
                                layout.Up
                                    ? new(
                                        segment.PieceId,
                                        across,
                                        along,
                                        across + segment.Height,
                                        along + segment.Width
                                    )
                                    : new(
                                        segment.PieceId,
                                        along,
                                        across,
                                        along + segment.Width,
                                        across + segment.Height
                                    )
                            );
                            along += segment.Width;
                        }
                    if (strip.Segments.All(segment => segment.Height < strip.Height))
                        return $"a strip of height {strip.Height} is taller than its pieces";
                    across += strip.Height;
                }
            foreach (var one in laid)
            {
                if (one.Right > problem.Width || one.Bottom > problem.Height)
                    return $"piece {one.Id} ends at {one.Right}, {one.Bottom}, the panel at {problem.Width}, {problem.Height}";
                if (!asked.TryGetValue(one.Id, out var piece))
                    return $"piece {one.Id} was never asked for";
                var (width, height) = (one.Right - one.Left, one.Bottom - one.Top);
                var upright = width == piece.Width && height == piece.Height;
                var turned = piece.Turnable && width == piece.Height && height == piece.Width;
                if (!upright && !turned)
                    return $"piece {one.Id} is {piece.Width} x {piece.Height}, the plan cuts {width} x {height}";
                made[one.Id] += layout.Copies;
            }
            for (var a = 0; a < laid.Count; a++)
            for (var b = a + 1; b < laid.Count; b++)
                if (
                    laid[a].Left < laid[b].Right
                    && laid[b].Left < laid[a].Right
                    && laid[a].Top < laid[b].Bottom
                    && laid[b].Top < laid[a].Bottom
                )
                    return $"pieces {laid[a].Id} and {laid[b].Id} overlap";
        }
        foreach (var piece in problem.Pieces)
            if (made[piece.Id] != piece.Count)
                return $"piece {piece.Id}: {made[piece.Id]} made, {piece.Count} asked for";
        if (panels != plan.Panels)
            return $"{panels} panels are cut, the plan says {plan.Panels}";
        return plan.LowerBound > plan.Panels
            ? $"the bound {plan.LowerBound} is above the plan {plan.Panels}"
            : null;
    }
}
