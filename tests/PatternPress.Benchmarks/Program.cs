using PatternPress.Benchmarks.Processes;

if (args is not ([] or ["processes"]))
{
    Console.Error.WriteLine(
        "benchmarks: processes (a cold check and a full build as whole processes)"
    );
    return 2;
}
DirectoryInfo? root = new(AppContext.BaseDirectory);
while (root is not null && !File.Exists(Path.Combine(root.FullName, "PatternPress.sln")))
{
    root = root.Parent;
}
if (root is null)
{
    Console.Error.WriteLine("the benchmarks run inside the repository only");
    return 2;
}
return ProcessBenchmark.Run(root.FullName);
