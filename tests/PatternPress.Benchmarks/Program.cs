using PatternPress.Benchmarks.Cutting;
using PatternPress.Benchmarks.Documents;
using PatternPress.Benchmarks.Processes;

return args switch
{
    [] or ["processes"] => InRepository(ProcessBenchmark.Run),
    ["cutting", .. var rest] => CuttingBenchmark.Run(rest),
    ["documents", .. var rest] => InRepository(r =>
        DocumentBenchmark.Run(r, rest.FirstOrDefault())
    ),
    ["set-booklet", var output] => InRepository(r => DocumentBenchmark.SetOnce(r, output)),
    ["lists", .. var rest] => ListsBenchmark.Run(rest),
    _ => Complain(
        """
        benchmarks:
          processes  a cold check and a full build as whole processes
          cutting    cutting plans against the reference solver
          documents  [PROGRAM] a booklet against a general-purpose document compiler of the npm registry, and, if
                     named, the whole build of a published program
          lists      how many of so many random cutting lists come out as the reference does
        """
    ),
};

static int InRepository(Func<string, int> run)
{
    DirectoryInfo? root = new(AppContext.BaseDirectory);
    while (root is not null && !File.Exists(Path.Combine(root.FullName, "PatternPress.sln")))
    {
        root = root.Parent;
    }
    return root is null
        ? Complain("the benchmarks run inside the repository only")
        : run(root.FullName);
}

static int Complain(string what)
{
    Console.Error.WriteLine(what);
    return 2;
}
