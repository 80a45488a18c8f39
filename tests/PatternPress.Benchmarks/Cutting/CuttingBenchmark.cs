using System.Diagnostics;
using PatternPress.Quilting.Cutting.Planning;
using PatternPress.Tests.Quilting.Cutting.Planning;

namespace PatternPress.Benchmarks.Cutting;

/// <summary>The strip planner against published optima and against CP-SAT in the same run: is the optimum reached, is the
/// bound proved, how long does it take. Times are processor time of this process, so that a busy machine does not
/// count.</summary>
internal static class CuttingBenchmark
{
    private const string Usage =
        "cutting [--instances folder] [--lists n] [--quilts n] [--reference-effort seconds] [--patterns folder]";

    /// <returns>0 when no plan is wrong, above the reference or short of a published optimum; else 1.</returns>
    public static int Run(string[] args)
    {
        var instances = Path.Combine("..", "shared", "checks", "packing");
        var patterns = "patterns";
        var (lists, quilts, effort) = (10_000, 1_000, 10.0);
        for (var i = 0; i < args.Length; i += 2)
        {
            if (i + 1 == args.Length)
                return Complain();
            switch (args[i])
            {
                case "--instances":
                    instances = args[i + 1];
                    break;
                case "--patterns":
                    patterns = args[i + 1];
                    break;
                case "--lists" when int.TryParse(args[i + 1], out var n):
                    lists = n;
                    break;
                case "--quilts" when int.TryParse(args[i + 1], out var n):
                    quilts = n;
                    break;
                case "--reference-effort" when double.TryParse(args[i + 1], out var seconds):
                    effort = seconds;
                    break;
                default:
                    return Complain();
            }
        }

        // The first plan pays for the compiler.
        StripPlanner.Plan(RandomCuttingList.Quilt(1), CutStyle.Thrifty);
        var faults = 0;
        if (Directory.Exists(patterns))
            faults += YardageBenchmark.Run(patterns);
        else
            Console.WriteLine($"no patterns in {patterns}");
        if (File.Exists(Path.Combine(instances, "optima.csv")))
            faults += Published(instances, effort);
        else
            Console.WriteLine($"no published instances in {instances}");
        foreach (var style in new[] { CutStyle.Thrifty, CutStyle.Plain })
        {
            faults += Against("small lists", RandomCuttingList.Small, style, lists, effort);
            faults += Against("quilts' lists", RandomCuttingList.Quilt, style, quilts, 0);
        }
        Console.WriteLine(faults == 0 ? "no plan at fault" : $"{faults} plans at fault");
        return faults == 0 ? 0 : 1;

        static int Complain()
        {
            Console.Error.WriteLine(Usage);
            return 2;
        }
    }

    private static int Published(string folder, double effort)
    {
        Console.WriteLine(
            $"{"instance", -28} {"optimum", 8} {"plan", 8} {"bound", 8} {"proved", 6} {"ms", 8}   CP-SAT {"", 8} ms"
        );
        var faults = 0;
        foreach (var instance in PublishedInstance.ReadAll(folder))
        {
            var (plan, time) = Timed(() =>
                Plan(instance.Problem, CutStyle.Thrifty, SearchEffort.Thorough)
            );
            var (reference, referenceTime) = Timed(() =>
                FlowReference.Solve(instance.Problem, CutStyle.Thrifty, plan.Total, effort)
            );
            var wrong =
                StripPlanCheck.Find(plan, instance.Problem)
                ?? (plan.LowerBound > instance.Optimum ? "bound above the optimum" : null)
                ?? (plan.Total > instance.Optimum + instance.Optimum / 1000 ? "too long" : null)
                ?? (!instance.Turned && !plan.Proved ? "not proved" : null);
            faults += wrong is null ? 0 : 1;
            var found = reference is { } total ? $"{total}" : "unsettled";
            Console.WriteLine(
                $"{instance, -28} {instance.Optimum, 8} {plan.Total, 8} {plan.LowerBound, 8} {(plan.Proved ? "yes" : "no"), 6} {time, 8:F1} {found, 10} {referenceTime, 8:F0} {wrong}"
            );
        }
        return faults;
    }

    /// <param name="effort">Of CP-SAT on each list; 0 for none.</param>
    private static int Against(
        string name,
        Func<int, CutProblem> draw,
        CutStyle style,
        int count,
        double effort
    )
    {
        if (count == 0)
            return 0;
        (int Seed, double Time, int Kinds, long Work)? slowest = null;
        var times = new List<double>();
        var referenceTimes = new List<double>();
        var (faults, proved, equal, unsettled, above, below, worst) = (0, 0, 0, 0, 0, 0, 0.0);
        for (var seed = 0; seed < count; seed++)
        {
            var problem = draw(seed);
            var (plan, time) = Timed(() => Plan(problem, style, SearchEffort.Usual));
            times.Add(time);
            if (slowest is null || time > slowest.Value.Time)
                slowest = (seed, time, problem.Pieces.Length, plan.Work);
            if (StripPlanCheck.Find(plan, problem) is { } wrong)
            {
                faults++;
                Console.WriteLine($"  seed {seed}: {wrong}");
            }
            proved += plan.Proved ? 1 : 0;
            worst = Math.Max(worst, plan.Gap / (double)plan.Total);
            if (effort == 0)
                continue;
            var (reference, referenceTime) = Timed(() =>
                FlowReference.Solve(problem, style, plan.Total, effort)
            );
            referenceTimes.Add(referenceTime);
            if (reference is not { } optimum)
                unsettled++;
            else if (plan.Total == optimum)
                equal++;
            else if (plan.Total > optimum)
                above++;
            else
                below++;
        }
        times.Sort();
        referenceTimes.Sort();
        Console.WriteLine();
        Console.WriteLine($"{count} {name}, {style}");
        Console.WriteLine(
            $"  proved {proved}, widest gap {worst:P3}; ms: median {At(times, 0.5):F2}, 95 % {At(times, 0.95):F1}, 99 % {At(times, 0.99):F1}, most {times[^1]:F0}"
        );
        if (slowest is { } slow)
            Console.WriteLine(
                $"  slowest: seed {slow.Seed}, {slow.Kinds} kinds, {slow.Time:F0} ms, {slow.Work:N0} steps"
            );
        if (effort > 0)
            Console.WriteLine(
                $"  CP-SAT: equal {equal}, below it {below}, above it {above}, unsettled {unsettled}; ms: median {At(referenceTimes, 0.5):F1}, 95 % {At(referenceTimes, 0.95):F0}"
            );
        return faults + above + below;

        static double At(List<double> sorted, double part) =>
            sorted[(int)((sorted.Count - 1) * part)];
    }

    private static StripPlan Plan(CutProblem problem, CutStyle style, SearchEffort effort) =>
        StripPlanner.Plan(problem, style, effort) is CutResult.Planned planned
            ? planned.Plan
            : throw new InvalidOperationException("A list of the benchmark was refused.");

    private static (T Result, double Milliseconds) Timed<T>(Func<T> run)
    {
        using var process = Process.GetCurrentProcess();
        var before = process.TotalProcessorTime;
        var result = run();
        process.Refresh();
        return (result, (process.TotalProcessorTime - before).TotalMilliseconds);
    }
}
