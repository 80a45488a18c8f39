using System.CommandLine;
using PatternPress.Cli.Files;
using PatternPress.Cli.Messages;
using PatternPress.Quilting.Compiling;

namespace PatternPress.Cli.Commands;

/// <summary>
/// <c>build</c>: checks patterns and writes their documents and tables. <c>release</c>: the same, and fixes what the
/// edition prints.
/// </summary>
internal static class Build
{
    public static Command Command(Terminal terminal, string directory) =>
        Make(
            "build",
            "Checks patterns and writes their booklets, charts and tables.",
            terminal,
            directory,
            release: false
        );

    public static Command ReleaseCommand(Terminal terminal, string directory) =>
        Make(
            "release",
            "Builds patterns and, if all is well, fixes what the edition prints in a file beside each.",
            terminal,
            directory,
            release: true
        );

    private static Command Make(
        string name,
        string description,
        Terminal terminal,
        string directory,
        bool release
    )
    {
        Argument<string[]> paths = CommonOptions.Paths();
        Option<string> messages = CommonOptions.Messages();
        Option<string?> templates = CommonOptions.Templates();
        Option<string> output = CommonOptions.Output();
        Option<string> paper = Papers.Option();
        Option<string[]> also = CommonOptions.Also();
        Option<string?> style = CommonOptions.Style();
        var command = new Command(name, description)
        {
            paths,
            output,
            paper,
            also,
            style,
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
            var editions = new EditionFiles(directory);
            var builder = new PatternBuilder(
                terminal,
                news,
                new TemplateLoader(directory, folder, parsed.GetValue(style)),
                Path.Combine(directory, parsed.GetValue(output)!),
                Papers.Of(parsed.GetValue(paper)!),
                parsed.GetValue(also)!,
                editions,
                PatternBuilder.Prove
            );
            IReadOnlyList<Compilation> built =
            [
                .. PatternLoader.Compile(directory, files, folder).Select(builder.Build),
            ];
            if (release)
            {
                foreach (Compilation compilation in built)
                {
                    Release.Fix(compilation, editions, news);
                }
            }
            Report.Write(terminal, parsed.GetValue(messages)!, built);
            return built.Any(c => c.HasErrors) ? ExitCode.Errors : ExitCode.Clean;
        });
        return command;
    }
}
