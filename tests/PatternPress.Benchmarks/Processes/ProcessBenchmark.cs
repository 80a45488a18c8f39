using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;

namespace PatternPress.Benchmarks.Processes;

/// <summary>
/// Times the program as a whole process, as a person meets it: a cold check against an empty console program that
/// was published the same way, and a full build with its peak memory.
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
            <PublishReadyToRun>true</PublishReadyToRun>
          </PropertyGroup>
        </Project>
        """;

    /// <param name="repository">The repository's folder; the patterns are built from there.</param>
    public static int Run(string repository)
    {
        string work = Directory.CreateTempSubdirectory("patternpress-bench-").FullName;
        try
        {
            string empty = PublishEmpty(work);
            string program = Publish(
                Path.Combine(repository, "src", "PatternPress.Cli", "PatternPress.Cli.csproj"),
                Path.Combine(work, "program"),
                "patternpress"
            );
            string[] patterns = Directory.GetFiles(
                Path.Combine(repository, "patterns"),
                "*.quilt.yaml"
            );
            Array.Sort(patterns, StringComparer.Ordinal);
            Console.WriteLine(
                $"{Runs} runs each, medians; {Environment.ProcessorCount} processors"
            );
            Console.WriteLine($"{"", -44} {"wall", 9} {"peak memory", 12} {"to empty", 9}");
            foreach (string pattern in patterns)
            {
                // In turn, so that both meet the same drift of a shared machine.
                var base_ = new List<Measured>();
                var check = new List<Measured>();
                for (int run = 0; run < Runs; run++)
                {
                    base_.Add(Measure(empty, [], repository));
                    check.Add(Measure(program, ["check", pattern], repository));
                }
                Print("empty console program", base_, base_);
                Print($"check {Path.GetFileName(pattern)}", check, base_);
            }
            foreach (string pattern in patterns)
            {
                var build = new List<Measured>();
                for (int run = 0; run < 3; run++)
                {
                    string output = Path.Combine(work, "out");
                    build.Add(Measure(program, ["build", pattern, "--output", output], repository));
                }
                Print($"build {Path.GetFileName(pattern)}", build, null);
            }
            return 0;
        }
        finally
        {
            Directory.Delete(work, recursive: true);
        }
    }

    private static void Print(string what, List<Measured> runs, List<Measured>? reference)
    {
        double wall = Median(runs.Select(r => r.Wall.TotalMilliseconds));
        double memory = Median(runs.Select(r => r.PeakBytes / 1e6));
        string ratio = reference is null
            ? ""
            : (wall / Median(reference.Select(r => r.Wall.TotalMilliseconds))).ToString(
                "0.0 ×",
                CultureInfo.InvariantCulture
            );
        Console.WriteLine($"{what, -44} {wall, 6:0} ms {memory, 9:0} MB {ratio, 9}");
    }

    private static double Median(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted[sorted.Length / 2];
    }

    private static string PublishEmpty(string work)
    {
        string folder = Path.Combine(work, "empty-source");
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "empty.csproj"), EmptyProject);
        File.WriteAllText(Path.Combine(folder, "Program.cs"), "return 0;\n");
        return Publish(Path.Combine(folder, "empty.csproj"), Path.Combine(work, "empty"), "empty");
    }

    private static string Publish(string project, string output, string name)
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
                "--self-contained",
                "false",
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
        while (!process.WaitForExit(5))
        {
            process.Refresh();
            peak = Math.Max(peak, process.PeakWorkingSet64);
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
