using PatternPress.Benchmarks.Cutting;
using PatternPress.Benchmarks.Processes;

return args switch
{
    [] or ["processes"] => RunProcesses(),
    ["cutting", .. var rest] => CuttingBenchmark.Run(rest),
    _ => Complain(
        """
        benchmarks:
          processes  a cold check and a full build as whole processes
          cutting    cutting plans against the reference solver
        """
    ),
};

static int RunProcesses()
{
    DirectoryInfo? root = new(AppContext.BaseDirectory);
    while (root is not null && !File.Exists(Path.Combine(root.FullName, "PatternPress.sln")))
    {
        root = root.Parent;
    }
    return root is null
        ? Complain("the benchmarks run inside the repository only")
        : ProcessBenchmark.Run(root.FullName);
}

static int Complain(string what)
{
    Console.Error.WriteLine(what);
    return 2;
}
