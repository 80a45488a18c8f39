using System.CommandLine;
using PatternPress.Cli.Files;
using PatternPress.Cli.Messages;
using PatternPress.Quilting.Compiling;

namespace PatternPress.Cli.Commands;

/// <summary><c>check</c>: computes every size and reports what is wrong; writes nothing.</summary>
internal static class Check
{
    public static Command Command(Terminal terminal, string directory)
    {
        Argument<string[]> paths = CommonOptions.Paths();
        Option<string> messages = CommonOptions.Messages();
        Option<string?> templates = CommonOptions.Templates();
        var command = new Command(
            "check",
            "Checks patterns in every size, without writing anything."
        )
        {
            paths,
            messages,
            templates,
        };
        command.SetAction(parsed =>
        {
            IReadOnlyList<string> files = PatternFiles.Find(directory, parsed.GetValue(paths)!);
            IReadOnlyList<Compilation> compilations = PatternLoader.Compile(
                directory,
                files,
                TemplateFolder.Find(directory, parsed.GetValue(templates))
            );
            Report.Write(terminal, parsed.GetValue(messages)!, compilations);
            return compilations.Any(c => c.HasErrors) ? ExitCode.Errors : ExitCode.Clean;
        });
        return command;
    }
}
