using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;

namespace PatternPress.Benchmarks.Processes;

/// <summary>
/// Times the program as a whole process, as a person meets it: a cold check against an empty console program, and a
/// full build with its peak memory. Both ways of publishing are shown: compiled ahead of time, as the program is
/// delivered, and on the runtime. Each is set against the empty program on the runtime, and against the one published
/// the same way.
/// </summary>
internal static class ProcessBenchmark
{
    private const int Runs = 11;

    private const string EmptyProject = """
        <Project Sdk="Microsoft.NET.Sdk">
          <PropertyGroup>
            <OutputType>Exe</OutputType>
            <TargetFramework>net10.0</TargetFramework>
            <InvariantGlobalization>true</InvariantGlobalization>
            <ConcurrentGarbageCollection>false</ConcurrentGarbageCollection>
            <PublishReadyToRun Condition="'$(PublishAot)' != 'true'">true</PublishReadyToRun>
            <CppCompilerAndLinker Condition="!Exists('/usr/bin/clang') and Exists('/usr/bin/gcc')">gcc</CppCompilerAndLinker>
          </PropertyGroup>
        </Project>
        """;

    /// <param name="repository">The repository's folder; the patterns are built from there.</param>
    public static int Run(string repository)
    {
        string work = Directory.CreateTempSubdirectory("patternpress-bench-").FullName;
        try
        {
            string project = Path.Combine(
                repository,
                "src",
                "PatternPress.Cli",
                "PatternPress.Cli.csproj"
            );
            string emptyProject = WriteEmptyProject(work);
            string[] patterns = Directory.GetFiles(
                Path.Combine(repository, "patterns"),
                "*.quilt.yaml"
            );
            Array.Sort(patterns, StringComparer.Ordinal);
            string emptyOnRuntime = "";
            foreach (bool native in new[] { false, true })
            {
                string way = native ? "native" : "runtime";
                string empty = Publish(
                    emptyProject,
                    Path.Combine(work, $"empty-{way}"),
                    "empty",
                    native
                );
                string program = Publish(project, Path.Combine(work, way), "patternpress", native);
                emptyOnRuntime = native ? emptyOnRuntime : empty;
                Console.WriteLine(
                    $"\n{way}: medians of {Runs} runs, {Environment.ProcessorCount} processors"
                );
                Console.WriteLine(
                    $"{"", -40} {"wall", 9} {"peak memory", 12} {"to empty", 9} {"to empty on the runtime", 24}"
                );
                foreach (string pattern in patterns)
                {
                    // In turn, so that all meet the same drift of a shared machine.
                    var onRuntime = new List<Measured>();
                    var nothing = new List<Measured>();
                    var check = new List<Measured>();
                    for (int run = 0; run < Runs; run++)
                    {
                        onRuntime.Add(Measure(emptyOnRuntime, [], repository));
                        nothing.Add(Measure(empty, [], repository));
                        check.Add(Measure(program, ["check", pattern], repository));
                    }
                    Print("empty console program", nothing, nothing, onRuntime);
                    Print($"check {Path.GetFileName(pattern)}", check, nothing, onRuntime);
                }
                foreach (string pattern in patterns)
                {
                    var build = new List<Measured>();
                    for (int run = 0; run < 3; run++)
                    {
                        string output = Path.Combine(work, "out");
                        build.Add(
                            Measure(program, ["build", pattern, "--output", output], repository)
                        );
                    }
                    Print($"build {Path.GetFileName(pattern)}", build);
                }
            }
            return 0;
        }
        finally
        {
            Directory.Delete(work, recursive: true);
        }
    }

    private static void Print(string what, List<Measured> runs, params List<Measured>[] references)
    {
        double memory = Median(runs.Select(r => r.PeakBytes / 1e6));
        string ratios = string.Concat(
            references.Select(
                (reference, i) =>
                    (Wall(runs) / Wall(reference))
                        .ToString("0.0 ×", CultureInfo.InvariantCulture)
                        .PadLeft(i == 0 ? 10 : 25)
            )
        );
        Console.WriteLine($"{what, -40} {Wall(runs), 6:0} ms {memory, 9:0} MB{ratios}");
    }

    private static double Wall(List<Measured> runs) =>
        Median(runs.Select(r => r.Wall.TotalMilliseconds));

    private static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted[sorted.Length / 2];
    }

    private static string WriteEmptyProject(string work)
    {
        string folder = Path.Combine(work, "empty-source");
        Directory.CreateDirectory(folder);
        string project = Path.Combine(folder, "empty.csproj");
        File.WriteAllText(project, EmptyProject);
        File.WriteAllText(Path.Combine(folder, "Program.cs"), "return 0;\n");
        return project;
    }

    private static string Publish(string project, string output, string name, bool native)
    {
        Measure(
            "dotnet",
            [
                "publish",
                project,
                "-c",
                "Release",
                "-r",
                RuntimeInformation.RuntimeIdentifier,
                $"-p:PublishAot={(native ? "true" : "false")}",
                native ? "--self-contained" : "--no-self-contained",
                "-o",
                output,
                "-v",
                "q",
                "--nologo",
            ],
            Path.GetDirectoryName(project)!
        );
        return Path.Combine(output, OperatingSystem.IsWindows() ? name + ".exe" : name);
    }

    private readonly record struct Measured(TimeSpan Wall, long PeakBytes);

    private static Measured Measure(string program, string[] arguments, string directory)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = directory,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        long began = Stopwatch.GetTimestamp();
        using Process process = Process.Start(start)!;
        Task<string> said = process.StandardOutput.ReadToEndAsync();
        Task<string> complained = process.StandardError.ReadToEndAsync();
        long peak = 0;
        // An ended process no longer tells its peak, so it is asked while it runs.
        while (!process.WaitForExit(2))
        {
            process.Refresh();
            try
            {
                peak = Math.Max(peak, process.PeakWorkingSet64);
            }
            catch (InvalidOperationException)
            {
                // It ended between the two questions.
            }
        }
        TimeSpan wall = Stopwatch.GetElapsedTime(began);
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException(
                $"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}\n{said.Result}{complained.Result}"
            );
        }
        return new Measured(wall, peak);
    }
}
