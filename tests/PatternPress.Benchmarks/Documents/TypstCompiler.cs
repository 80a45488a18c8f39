using System.Diagnostics;

namespace PatternPress.Benchmarks.Documents;

/// <summary>The document compiler typst as the npm registry carries it, in a folder of its own; it needs node and npm.</summary>
internal sealed class TypstCompiler
{
    /// <summary>Bindings of typst for node, as a package of the npm registry.</summary>
    public const string Package = "@myriaddreamin/typst-ts-node-compiler@0.7.0";

    // Sets the file once and ends, or keeps setting it and tells how long each time took. Results it remembers from the
    // time before are thrown away, since nothing would be left to do.
    private const string Script = """
        const { NodeCompiler } = require('@myriaddreamin/typst-ts-node-compiler');
        const fs = require('fs');
        const [source, fonts, output, rounds] = process.argv.slice(2);
        const compiler = NodeCompiler.create({ workspace: __dirname, fontArgs: [{ fontPaths: [fonts] }] });
        const text = fs.readFileSync(source, 'utf8');
        for (let round = 0; round < Number(rounds); round++) {
          compiler.evictCache(0);
          const began = process.hrtime.bigint();
          const pdf = compiler.pdf({ mainFileContent: text + '\n// ' + round + '\n' });
          const ended = process.hrtime.bigint();
          if (round === 0) fs.writeFileSync(output, pdf);
          console.log(Number(ended - began) / 1e6);
        }
        """;

    private readonly string _folder;

    private TypstCompiler(string folder) => _folder = folder;

    /// <returns>Null, with the reason, where it is not to be had.</returns>
    public static TypstCompiler? Install(string folder, out string reason)
    {
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "package.json"), "{\"private\": true}\n");
        File.WriteAllText(Path.Combine(folder, "set.js"), Script);
        string npm = OperatingSystem.IsWindows() ? "npm.cmd" : "npm";
        foreach (
            (string program, string[] arguments) in new (string, string[])[]
            {
                ("node", ["--version"]),
                (npm, ["install", "--no-audit", "--no-fund", "--silent", Package]),
            }
        )
        {
            try
            {
                (int code, string said, _) = Run(program, arguments, folder);
                if (code != 0)
                {
                    reason =
                        $"{program} {string.Join(' ', arguments)} ended with {code}: {said.Trim()}";
                    return null;
                }
            }
            catch (System.ComponentModel.Win32Exception)
            {
                reason = $"there is no {program} on this machine";
                return null;
            }
        }
        reason = "";
        return new TypstCompiler(folder);
    }

    /// <summary>Sets a file in a process of its own.</summary>
    /// <returns>The whole process, and each round within it.</returns>
    public (TimeSpan Whole, double[] Rounds) Set(
        string source,
        string fonts,
        string output,
        int rounds
    )
    {
        (int code, string said, TimeSpan whole) = Run(
            "node",
            ["set.js", source, fonts, output, $"{rounds}"],
            _folder
        );
        return code == 0
            ? (
                whole,
                [
                    .. said.Split('\n', StringSplitOptions.RemoveEmptyEntries)
                        .Select(line =>
                            double.Parse(line, System.Globalization.CultureInfo.InvariantCulture)
                        ),
                ]
            )
            : throw new InvalidOperationException($"typst did not set the document: {said}");
    }

    public static (int Code, string Said, TimeSpan Whole) Run(
        string program,
        string[] arguments,
        string folder
    )
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        long began = Stopwatch.GetTimestamp();
        using Process process = Process.Start(start)!;
        Task<string> complained = process.StandardError.ReadToEndAsync();
        string said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        TimeSpan whole = Stopwatch.GetElapsedTime(began);
        return (process.ExitCode, process.ExitCode == 0 ? said : said + complained.Result, whole);
    }
}
