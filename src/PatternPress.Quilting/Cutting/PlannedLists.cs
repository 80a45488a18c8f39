using PatternPress.Quilting.Cutting.Planning;

namespace PatternPress.Quilting.Cutting;

/// <summary>Plans of strips, each list planned once however often it is asked for.</summary>
internal sealed class PlannedLists
{
    private readonly Dictionary<Question, (StripPlan Plan, bool Whole)> _plans = new(
        new SameQuestion()
    );

    private sealed record Question(CutProblem Problem, CutStyle Style, SearchEffort Effort);

    /// <param name="problem">Without faults.</param>
    /// <param name="settled">Where this is said of the least total, a shorter plan is looked for no further.</param>
    public StripPlan Plan(
        CutProblem problem,
        CutStyle style,
        SearchEffort effort,
        Func<long, bool>? settled
    )
    {
        var question = new Question(problem, style, effort);
        lock (_plans)
        {
            if (
                _plans.TryGetValue(question, out (StripPlan Plan, bool Whole) known)
                && (known.Whole || settled?.Invoke(known.Plan.LowerBound) == true)
            )
            {
                return known.Plan;
            }
        }
        StripPlan plan = (
            (CutResult.Planned)StripPlanner.Plan(problem, style, effort, settled)
        ).Plan;
        lock (_plans)
        {
            _plans[question] = (
                plan,
                plan.Proved || settled?.Invoke(plan.LowerBound) is null or false
            );
        }
        return plan;
    }

    private sealed class SameQuestion : IEqualityComparer<Question>
    {
        public bool Equals(Question? a, Question? b) =>
            a!.Style == b!.Style
            && a.Effort == b.Effort
            && a.Problem.Width == b.Problem.Width
            && a.Problem.Pieces.AsSpan().SequenceEqual(b.Problem.Pieces.AsSpan())
            && a.Problem.Remainders.AsSpan().SequenceEqual(b.Problem.Remainders.AsSpan());

        public int GetHashCode(Question question)
        {
            var hash = new HashCode();
            hash.Add(question.Problem.Width);
            hash.Add(question.Style == CutStyle.Plain);
            foreach (CutPiece piece in question.Problem.Pieces)
            {
                hash.Add(piece.Width);
                hash.Add(piece.Height);
                hash.Add(piece.Count);
            }
            return hash.ToHashCode();
        }
    }
}
