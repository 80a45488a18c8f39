namespace PatternPress.Quilting.Cutting.Planning.Search;

/// <summary>Which number of strips at least so tall to branch on. The first few times it is the least height that is not
/// whole: how many strips there are at all binds every price. After that it is the one that promises to raise both
/// branches' bounds, by what was learned of each height so far, and by trying where too little was learned ("reliability
/// branching": Achterberg, Koch and Martin, Operations Research Letters 33, 2005).</summary>
internal sealed class HeightBranching(StripModel model)
{
    /// <summary>Nodes before anything is tried out.</summary>
    private const int Untried = 12;

    /// <summary>How often each branch of a height must have been seen before its average is believed.</summary>
    private const int Reliable = 2;

    private const double Whole = 1e-6;

    private readonly double[,] gain = new double[model.Heights.Length, 2];
    private readonly int[,] seen = new int[model.Heights.Length, 2];
    private int choices;

    /// <summary>One branch that was solved: by how much it raised the total.</summary>
    /// <param name="moved">By how much it moved the number of strips.</param>
    public void Learn(int height, bool up, double moved, double raised)
    {
        gain[height, up ? 1 : 0] += raised / Math.Max(moved, Whole);
        seen[height, up ? 1 : 0]++;
    }

    /// <param name="solve">Solves a branch; what it raises the total by, infinite if nothing is left in it.</param>
    /// <returns>Null if all numbers are whole.</returns>
    public (int Height, double Strips)? Choose(Relaxed relaxed, Func<int, long, bool, double> solve)
    {
        choices++;
        (int Height, double Strips)? best = null;
        var highest = double.NegativeInfinity;
        for (var height = model.Heights.Length - 1; height >= 0; height--)
        {
            double strips = 0;
            foreach (var (pattern, times) in relaxed.Strips)
                if (model.IsAtLeast(pattern.Family, height))
                    strips += times;
            if (Math.Abs(strips - Math.Round(strips)) < Whole)
                continue;
            if (choices <= Untried)
                return (height, strips);

            var floor = (long)Math.Floor(strips);
            var score = Score(Raise(up: true), Raise(up: false));
            if (score > highest)
                (best, highest) = ((height, strips), score);

            double Raise(bool up)
            {
                var side = up ? 1 : 0;
                var moved = up ? floor + 1 - strips : strips - floor;
                if (seen[height, side] < Reliable)
                {
                    var raised = solve(height, up ? floor + 1 : floor, up);
                    if (double.IsFinite(raised))
                        Learn(height, up, moved, raised);
                    return raised;
                }
                return gain[height, side] / seen[height, side] * moved;
            }
        }
        return best;
    }

    private static double Score(double up, double down) =>
        Math.Max(Math.Min(up, 1e6), 1e-3) * Math.Max(Math.Min(down, 1e6), 1e-3);
}
