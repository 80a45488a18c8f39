using System.CommandLine;
using PatternPress.Cli.Files;
using PatternPress.Cli.Messages;
using PatternPress.Quilting.Compiling;
using PatternPress.Typesetting;

namespace PatternPress.Cli.Commands;

/// <summary><c>build</c>: checks patterns and writes their documents and tables.</summary>
internal static class Build
{
    private static readonly (string Name, PaperSize Size)[] _papers =
    [
        ("letter", PaperSize.Letter),
        ("a4", PaperSize.A4),
    ];

    public static Command Command(Terminal terminal, string directory)
    {
        Argument<string[]> paths = CommonOptions.Paths();
        Option<string> messages = CommonOptions.Messages();
        Option<string?> templates = CommonOptions.Templates();
        var output = new Option<string>("--output")
        {
            Description = "The folder to write to; each pattern gets a folder of its own in it.",
            DefaultValueFactory = _ => "out",
        };
        var paper = new Option<string>("--paper")
        {
            Description = "The paper to build for.",
            DefaultValueFactory = _ => "both",
        };
        paper.AcceptOnlyFromAmong([.. _papers.Select(p => p.Name), "both"]);
        var command = new Command(
            "build",
            "Checks patterns and writes their booklets, charts and tables."
        )
        {
            paths,
            output,
            paper,
            messages,
            templates,
        };
        command.SetAction(parsed =>
        {
            IReadOnlyList<string> files = PatternFiles.Find(directory, parsed.GetValue(paths)!);
            string folder = TemplateFolder.Find(directory, parsed.GetValue(templates));
            // A format for programs has the output to itself.
            TextWriter news =
                parsed.GetValue(messages) == MessageFormats.Default
                    ? terminal.Output
                    : terminal.Error;
            var builder = new PatternBuilder(
                terminal,
                news,
                new TemplateLoader(directory, folder),
                Path.Combine(directory, parsed.GetValue(output)!),
                [
                    .. _papers.Where(p =>
                        parsed.GetValue(paper) is var wanted
                        && (wanted == "both" || wanted == p.Name)
                    ),
                ],
                PatternBuilder.Prove
            );
            IReadOnlyList<Compilation> built =
            [
                .. PatternLoader.Compile(directory, files, folder).Select(builder.Build),
            ];
            Report.Write(terminal, parsed.GetValue(messages)!, built);
            return built.Any(c => c.HasErrors) ? ExitCode.Errors : ExitCode.Clean;
        });
        return command;
    }
}
