using PatternPress.Quilting.Cutting.Planning;
using PatternPress.Tests.Quilting.Cutting.Planning;

namespace PatternPress.Benchmarks.Cutting;

/// <summary>Random cutting lists of up to twelve kinds of pieces, each planned and each solved by another road: CP-SAT for strips
/// of either style, trying everything for panels. Counts how many plans are as good, above, below, and how many broke down.
/// Seeds count on, so that a long run can be made in parts.</summary>
internal static class ListsBenchmark
{
    private const string Usage =
        "lists count [--from seed] [--style plain|thrifty|panels] [--effort seconds]";

    /// <returns>0 when no plan is wrong, above or below the reference, and none broke down; else 1.</returns>
    public static int Run(string[] args)
    {
        if (args.Length == 0 || !int.TryParse(args[0], out var count))
            return Complain();
        var (from, effort) = (0, 2.0);
        string[] styles = ["plain", "thrifty", "panels"];
        for (var i = 1; i < args.Length; i += 2)
            switch (args[i])
            {
                case "--from" when i + 1 < args.Length && int.TryParse(args[i + 1], out var seed):
                    from = seed;
                    break;
                case "--effort"
                    when i + 1 < args.Length && double.TryParse(args[i + 1], out var seconds):
                    effort = seconds;
                    break;
                case "--style" when i + 1 < args.Length && styles.Contains(args[i + 1]):
                    styles = [args[i + 1]];
                    break;
                default:
                    return Complain();
            }
        var faults = 0;
        foreach (var style in styles)
            faults += Against(style, from, count, effort);
        return faults == 0 ? 0 : 1;

        static int Complain()
        {
            Console.Error.WriteLine(Usage);
            return 2;
        }
    }

    private static int Against(string style, int from, int count, double effort)
    {
        var (equal, above, below, unsettled, wrong, crashed, proved) = (0, 0, 0, 0, 0, 0, 0);
        var times = new List<double>();
        for (var seed = from; seed < from + count; seed++)
        {
            try
            {
                var one =
                    style == "panels"
                        ? Panels(seed, times)
                        : Strips(
                            seed,
                            style == "plain" ? CutStyle.Plain : CutStyle.Thrifty,
                            effort,
                            times
                        );
                proved += one.Proved ? 1 : 0;
                if (one.Wrong is { } why)
                {
                    wrong++;
                    Console.WriteLine($"  seed {seed}: {why}");
                }
                else if (one.Reference is not { } optimum)
                    unsettled++;
                else if (optimum == one.Plan)
                    equal++;
                else
                {
                    above += one.Plan > optimum ? 1 : 0;
                    below += one.Plan < optimum ? 1 : 0;
                    Console.WriteLine(
                        $"  seed {seed}: the plan takes {one.Plan}, the reference {optimum}"
                    );
                }
            }
            catch (Exception broken)
            {
                crashed++;
                Console.WriteLine($"  seed {seed}: {broken.Message}");
            }
        }
        times.Sort();
        Console.WriteLine(
            $"{style}, seeds {from} to {from + count - 1}: equal {equal}, above {above}, below {below}, wrong {wrong}, crashed {crashed}, unsettled by the reference {unsettled}; proved {proved}; ms of a plan: median {At(0.5):F2}, 99 % {At(0.99):F1}, most {At(1):F0}"
        );
        return above + below + wrong + crashed;

        double At(double part) => times.Count == 0 ? 0 : times[(int)((times.Count - 1) * part)];
    }

    private static (long Plan, long? Reference, bool Proved, string? Wrong) Strips(
        int seed,
        CutStyle style,
        double effort,
        List<double> times
    )
    {
        var problem = RandomCuttingList.WholeInches(seed);
        var start = Environment.CpuUsage.TotalTime;
        var plan = ((CutResult.Planned)StripPlanner.Plan(problem, style)).Plan;
        // About one list in five hundred is not settled by the usual effort; what is compared is the search, not the effort.
        if (!plan.Proved)
            plan = (
                (CutResult.Planned)StripPlanner.Plan(problem, style, SearchEffort.Thorough)
            ).Plan;
        times.Add((Environment.CpuUsage.TotalTime - start).TotalMilliseconds);
        return (
            plan.Total,
            FlowReference.Solve(problem, style, plan.Total, effort),
            plan.Proved,
            StripPlanCheck.Find(plan, problem)
        );
    }

    private static (long Plan, long? Reference, bool Proved, string? Wrong) Panels(
        int seed,
        List<double> times
    )
    {
        var problem = RandomPanelList.Few(seed);
        var start = Environment.CpuUsage.TotalTime;
        var plan = ((PanelResult.Planned)PanelPlanner.Plan(problem)).Plan;
        times.Add((Environment.CpuUsage.TotalTime - start).TotalMilliseconds);
        return (
            plan.Panels,
            PanelReference.Solve(problem),
            plan.Proved,
            PanelPlanCheck.Find(plan, problem)
        );
    }
}
