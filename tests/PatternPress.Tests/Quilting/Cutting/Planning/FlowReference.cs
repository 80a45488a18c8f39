using Google.OrTools.Sat;
using PatternPress.Quilting.Cutting.Planning;

namespace PatternPress.Tests.Quilting.Cutting.Planning;

/// <summary>The least total height of strips by another road: pieces as a flow through positions of strips, all at once
/// as a whole-number program for CP-SAT (Valério de Carvalho's arc-flow model, for two stages as in Macedo, Alves and
/// Valério de Carvalho, "Arc-flow model for the two-dimensional guillotine cutting stock problem", Computers and
/// Operations Research 37, 2010).</summary>
internal static class FlowReference
{
    private sealed record Lie(int Kind, int Width, long Height);

    /// <param name="most">Only plans of at most this total are looked for.</param>
    /// <param name="effort">CP-SAT's deterministic time: very roughly seconds.</param>
    /// <returns>The proved optimum; null if the solver could not prove one with its effort.</returns>
    /// <exception cref="InvalidOperationException">There is no plan of at most that total: the one that was made elsewhere
    /// cannot be right, or this model is wrong.</exception>
    public static long? Solve(CutProblem problem, CutStyle style, long most, double effort = 10)
    {
        var model = new CpModel();
        var lies = problem
            .Pieces.SelectMany(
                (piece, kind) =>
                    piece.Turnable && piece.Width != piece.Height
                        ? new[]
                        {
                            new Lie(kind, (int)piece.Width, piece.Height),
                            new Lie(kind, (int)piece.Height, piece.Width),
                        }
                        : [new Lie(kind, (int)piece.Width, piece.Height)]
            )
            .Where(lie => lie.Width <= problem.Width)
            .OrderByDescending(lie => lie.Height)
            .ThenByDescending(lie => lie.Width)
            .ToArray();

        var made = problem.Pieces.Select(_ => new List<IntVar>()).ToArray();
        var strips = new List<IntVar>();
        var costs = new List<long>();
        foreach (var height in lies.Select(lie => lie.Height).Distinct())
            if (style == CutStyle.Plain)
            {
                var same = lies.Where(lie => lie.Height == height).ToArray();
                Flow(same, [height], limited: false);
            }
        Flow(lies, [.. lies.Select(lie => lie.Height).Distinct()], style == CutStyle.Plain);

        for (var kind = 0; kind < made.Length; kind++)
            model.Add(LinearExpr.Sum(made[kind]) >= problem.Pieces[kind].Count);
        var total = LinearExpr.WeightedSum(strips, costs);
        model.Add(total <= most);
        model.Minimize(total);

        var solver = new CpSolver
        {
            StringParameters =
                $"num_workers:1,linearization_level:2,max_deterministic_time:{effort}",
        };
        var status = solver.Solve(model);
        if (status is CpSolverStatus.Infeasible or CpSolverStatus.ModelInvalid)
            throw new InvalidOperationException($"No plan of at most {most}: {status}.");
        return status == CpSolverStatus.Optimal ? (long)Math.Round(solver.ObjectiveValue) : null;

        // One network: strips of each height begin at position 0 before the first piece of that height, take pieces from
        // the tallest to the shortest, and may end anywhere.
        void Flow(Lie[] pieces, long[] heights, bool limited)
        {
            var width = (int)problem.Width;
            var into = new Dictionary<(int Stage, int Position), List<(IntVar Var, int Sign)>>();
            void Link(int stage, int position, IntVar variable, int sign)
            {
                if (!into.TryGetValue((stage, position), out var list))
                    into[(stage, position)] = list = [];
                list.Add((variable, sign));
            }

            var soTall = new List<IntVar>();
            var flat = lies.GroupBy(lie => lie.Kind)
                .Select(kind => kind.Min(lie => lie.Height))
                .Distinct()
                .ToList();
            foreach (var height in heights)
            {
                var count = model.NewIntVar(0, most / height, "");
                // Of the strips at least so tall no more than there are heights of pieces that lie flat.
                soTall.Add(count);
                if (limited)
                    model.Add(
                        LinearExpr.Sum(soTall) <= Math.Max(1, flat.Count(other => other >= height))
                    );
                strips.Add(count);
                costs.Add(height);
                Link(Array.FindIndex(pieces, piece => piece.Height == height), 0, count, 1);
            }
            var reached = new bool[pieces.Length + 1, width + 1];
            for (var stage = 0; stage < pieces.Length; stage++)
            {
                reached[stage, 0] = true;
                var piece = pieces[stage];
                for (var at = 0; at <= width; at++)
                {
                    if (!reached[stage, at])
                        continue;
                    if (at + piece.Width <= width)
                    {
                        reached[stage, at + piece.Width] = true;
                        var arc = model.NewIntVar(0, most / piece.Height, "");
                        made[piece.Kind].Add(arc);
                        Link(stage, at, arc, -1);
                        Link(stage, at + piece.Width, arc, 1);
                    }
                    if (stage + 1 < pieces.Length)
                    {
                        reached[stage + 1, at] = true;
                        var skip = model.NewIntVar(0, most, "");
                        Link(stage, at, skip, -1);
                        Link(stage + 1, at, skip, 1);
                    }
                }
            }
            foreach (var links in into.Values)
                model.Add(
                    LinearExpr.WeightedSum(
                        links.Select(link => link.Var),
                        links.Select(link => link.Sign)
                    ) >= 0
                );
        }
    }
}
