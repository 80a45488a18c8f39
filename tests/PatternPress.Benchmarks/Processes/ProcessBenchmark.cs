using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;

namespace PatternPress.Benchmarks.Processes;

/// <summary>
/// Times the program as a whole process, as a person meets it: a cold check against an empty console program, and a
/// full build with its peak memory. Both ways of publishing are shown: compiled ahead of time, as the program is
/// delivered, and on the runtime. Each is set against programs published the same way: what <c>dotnet new console</c> writes,
/// one greeting, and one that returns at once; and against the greeting on the runtime.
/// </summary>
internal static class ProcessBenchmark
{
    private const int Runs = 21;

    private const string EmptyProject = """
        <Project Sdk="Microsoft.NET.Sdk">
          <PropertyGroup>
            <OutputType>Exe</OutputType>
            <TargetFramework>net10.0</TargetFramework>
            <ImplicitUsings>enable</ImplicitUsings>
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
            string greeting = WriteProject(
                work,
                "greeting",
                "Console.WriteLine(\"Hello, World!\");\n"
            );
            string nothing = WriteProject(work, "nothing", "return 0;\n");
            string[] patterns = Directory.GetFiles(
                Path.Combine(repository, "patterns"),
                "*.quilt.yaml"
            );
            Array.Sort(patterns, StringComparer.Ordinal);
            TimeAsDeveloped(project, greeting, patterns, repository);
            string onRuntime = "";
            foreach (bool native in new[] { false, true })
            {
                string way = native ? "native" : "runtime";
                string Made(string source, string name) =>
                    Publish(source, Path.Combine(work, $"{name}-{way}"), name, native);
                (string greets, string returns) = (
                    Made(greeting, "greeting"),
                    Made(nothing, "nothing")
                );
                string program = Made(project, "patternpress");
                onRuntime = native ? onRuntime : greets;
                Console.WriteLine(
                    $"\n{way}: medians of {Runs} runs, {Environment.ProcessorCount} processors"
                );
                Console.WriteLine(
                    $"{"", -40} {"wall", 9} {"peak memory", 12} {"to greeting", 12} {"to nothing", 12} {"to greeting on the runtime", 27}"
                );
                foreach (string pattern in patterns)
                {
                    // In turn, so that all meet the same drift of a shared machine.
                    string[] programs = [onRuntime, greets, returns, program];
                    List<TimeSpan>[] walls =
                    [
                        [],
                        [],
                        [],
                        [],
                    ];
                    for (int run = 0; run < Runs; run++)
                    {
                        for (int i = 0; i < programs.Length; i++)
                        {
                            string[] arguments = i == 3 ? ["check", pattern] : [];
                            walls[i].Add(Time(programs[i], arguments, repository));
                        }
                    }
                    TimeSpan[] medians = [.. walls.Select(Median)];
                    if (pattern == patterns[0])
                    {
                        Print("greeting", medians[1], Peak(greets, [], repository), medians);
                        Print(
                            "returns at once",
                            medians[2],
                            Peak(returns, [], repository),
                            medians
                        );
                    }
                    Print(
                        $"check {Path.GetFileName(pattern)}",
                        medians[3],
                        Peak(program, ["check", pattern], repository),
                        medians
                    );
                }
                foreach (string pattern in patterns)
                {
                    string[] arguments = ["build", pattern, "--output", Path.Combine(work, "out")];
                    Print(
                        $"build {Path.GetFileName(pattern)}",
                        Median([
                            .. Enumerable
                                .Range(0, 3)
                                .Select(_ => Time(program, arguments, repository)),
                        ]),
                        Peak(program, arguments, repository)
                    );
                }
            }
            return 0;
        }
        finally
        {
            Directory.Delete(work, recursive: true);
        }
    }

    /// <summary>With <c>dotnet run</c>, as README runs it, what is built left as it is.</summary>
    private static void TimeAsDeveloped(
        string project,
        string greeting,
        string[] patterns,
        string repository
    )
    {
        foreach (string built in new[] { project, greeting })
        {
            Time("dotnet", ["build", built, "-c", "Release", "-v", "q", "--nologo"], repository);
        }
        TimeSpan Run(string of, params string[] arguments) =>
            Median([
                .. Enumerable
                    .Range(0, 5)
                    .Select(_ =>
                        Time(
                            "dotnet",
                            [
                                "run",
                                "--no-build",
                                "-c",
                                "Release",
                                "--project",
                                of,
                                "--",
                                .. arguments,
                            ],
                            repository
                        )
                    ),
            ]);
        TimeSpan greets = Run(greeting);
        Console.WriteLine($"dotnet run: greeting {greets.TotalMilliseconds:0} ms");
        foreach (string pattern in patterns)
        {
            TimeSpan check = Run(project, "check", pattern);
            Console.WriteLine(
                $"check {Path.GetFileName(pattern), -34} {check.TotalMilliseconds, 6:0} ms {check / greets:0.0} × the greeting"
            );
        }
    }

    /// <param name="medians">Of the greeting on the runtime, of the greeting and of what returns at once.</param>
    private static void Print(
        string what,
        TimeSpan wall,
        long peakBytes,
        params ReadOnlySpan<TimeSpan> medians
    )
    {
        string Ratio(TimeSpan reference, int width) =>
            (wall / reference).ToString("0.0 ×", CultureInfo.InvariantCulture).PadLeft(width);
        string ratios = medians.IsEmpty
            ? ""
            : Ratio(medians[1], 13) + Ratio(medians[2], 13) + Ratio(medians[0], 28);
        Console.WriteLine(
            $"{what, -40} {wall.TotalMilliseconds, 6:0.0} ms {peakBytes / 1e6, 9:0} MB{ratios}"
        );
    }

    private static TimeSpan Median(List<TimeSpan> values)
    {
        TimeSpan[] sorted = [.. values.Order()];
        return sorted[sorted.Length / 2];
    }

    private static string WriteProject(string work, string name, string code)
    {
        string folder = Path.Combine(work, $"{name}-source");
        Directory.CreateDirectory(folder);
        string project = Path.Combine(folder, $"{name}.csproj");
        File.WriteAllText(project, EmptyProject);
        File.WriteAllText(Path.Combine(folder, "Program.cs"), code);
        return project;
    }

    private static string Publish(string project, string output, string name, bool native)
    {
        Time(
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

    // Nothing is looked at while the process runs: that would take the processors away from it.
    private static TimeSpan Time(string program, string[] arguments, string directory)
    {
        long began = Stopwatch.GetTimestamp();
        using Process process = Begin(program, arguments, directory);
        Task<string> said = process.StandardOutput.ReadToEndAsync();
        Task<string> complained = process.StandardError.ReadToEndAsync();
        process.WaitForExit();
        TimeSpan wall = Stopwatch.GetElapsedTime(began);
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException(
                $"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}\n{said.Result}{complained.Result}"
            );
        }
        return wall;
    }

    /// <summary>The most memory held at once, the largest of five runs: an ended process no longer tells, so it is asked while
    /// it runs, and a short one may be missed in its last moments.</summary>
    private static long Peak(string program, string[] arguments, string directory)
    {
        long peak = 0;
        for (int run = 0; run < 5; run++)
        {
            using Process process = Begin(program, arguments, directory);
            _ = process.StandardOutput.ReadToEndAsync();
            _ = process.StandardError.ReadToEndAsync();
            while (!process.WaitForExit(1))
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
        }
        return peak;
    }

    private static Process Begin(string program, string[] arguments, string directory) =>
        Process.Start(
            new ProcessStartInfo(program, arguments)
            {
                WorkingDirectory = directory,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            }
        )!;
}
