using PatternPress.Quilting.Cutting.Planning;

namespace PatternPress.Tests.Quilting.Cutting.Planning;

/// <summary>Lays every piece of a plan out as a rectangle and looks at the rectangles alone: inside its strip, beside and
/// not over its neighbour, of the size that was asked for, as many as were asked for. Uses nothing of the planner's
/// arithmetic.</summary>
internal static class StripPlanCheck
{
    /// <summary>The first thing wrong with the plan, or null.</summary>
    public static string? Find(StripPlan plan, CutProblem problem)
    {
        var asked = problem.Pieces.ToDictionary(piece => piece.Id);
        var made = problem.Pieces.ToDictionary(piece => piece.Id, _ => 0L);
        long top = 0;
        var taken = new long[problem.Remainders.Length];
        if (plan.Width != problem.Width)
            return $"the plan is for width {plan.Width}, the fabric has {problem.Width}";

        foreach (var strip in plan.Strips)
        {
            if (strip.Copies < 1 || strip.Height < 1)
                return $"a strip of height {strip.Height} cut {strip.Copies} times";
            if (strip.Segments.IsEmpty)
                return "an empty strip";
            long left = 0;
            foreach (var segment in strip.Segments)
            {
                if (!asked.TryGetValue(segment.PieceId, out var piece))
                    return $"piece {segment.PieceId} was never asked for";
                if (segment.Count < 1)
                    return $"piece {piece.Id} laid {segment.Count} times";
                if (segment.Turned && !piece.Turnable)
                    return $"piece {piece.Id} must not be turned";
                var (width, height) = segment.Turned
                    ? (piece.Height, piece.Width)
                    : (piece.Width, piece.Height);
                if (segment.Width != width || segment.Height != height)
                    return $"piece {piece.Id} is {width} x {height}, the plan cuts {segment.Width} x {segment.Height}";
                if (height > strip.Height)
                    return $"piece {piece.Id} of height {height} leaves its strip of height {strip.Height}";
                left += segment.Count * width;
                var end = strip.From is { } from ? problem.Remainders[from].Width : problem.Width;
                if (left > end)
                    return $"piece {piece.Id} ends at {left}, the strip at {end}";
                made[piece.Id] += segment.Count * strip.Copies;
            }
            if (strip.Segments.All(segment => segment.Height < strip.Height))
                return $"a strip of height {strip.Height} is taller than its pieces";
            if (strip.From is null)
                top += strip.Height * strip.Copies;
            else
                taken[strip.From.Value] += strip.Height * strip.Copies;
        }

        for (var i = 0; i < taken.Length; i++)
            if (taken[i] > problem.Remainders[i].Length)
                return $"{taken[i]} are cut from remainder {i} of {problem.Remainders[i].Length}";
        foreach (var piece in problem.Pieces)
            if (made[piece.Id] != piece.Count)
                return $"piece {piece.Id}: {made[piece.Id]} made, {piece.Count} asked for";
        if (top != plan.Total)
            return $"the strips measure {top}, the plan says {plan.Total}";
        if (plan.LowerBound > plan.Total)
            return $"the bound {plan.LowerBound} is above the plan {plan.Total}";
        if (plan.Style == CutStyle.Plain)
            return FindMixing(plan, problem);
        return null;
    }

    /// <summary>Of the strips at least so tall no more may hold pieces of another height than there are heights of
    /// pieces.</summary>
    private static string? FindMixing(StripPlan plan, CutProblem problem)
    {
        // As flat as they can lie.
        var heights = problem
            .Pieces.Where(piece => piece.Count > 0)
            .Select(piece =>
                !piece.Turnable ? piece.Height
                : Math.Max(piece.Width, piece.Height) <= problem.Width
                    ? Math.Min(piece.Width, piece.Height)
                : Math.Max(piece.Width, piece.Height)
            )
            .ToHashSet();
        foreach (var height in plan.Strips.Select(strip => strip.Height).Distinct())
        {
            var mixed = plan
                .Strips.Where(strip =>
                    strip.Height >= height
                    && strip.Segments.Any(segment => segment.Height != strip.Height)
                )
                .Sum(strip => strip.Copies);
            var most = Math.Max(1, heights.Count(other => other >= height));
            if (mixed > most)
                return $"{mixed} strips of height {height} and more are mixed, the plain style allows {most}";
        }
        return null;
    }
}
